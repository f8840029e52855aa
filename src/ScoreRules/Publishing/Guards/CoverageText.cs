using Humanizer;
using ScoreRules.Guarding.Exercising;

namespace ScoreRules.Publishing.Guards;

/// <summary>Which rules the expectations exercise, for a terminal: counts by kind, and each rule that none exercises.</summary>
public static class CoverageText
{
    private const int Gutter = 24;

    /// <summary>The whole text.</summary>
    public static string Print(IReadOnlyList<ExercisedRule> rules)
    {
        var block = new TextBlock();
        block.Line("What the expectations exercise");
        foreach (var group in rules.GroupBy(rule => rule.Group))
        {
            block.Line($"  {TextBlock.Pad(Name(group.Key), Gutter)}{NumberText.Count(group.Count(rule => !rule.By.IsEmpty))} of {NumberText.Count(group.Count())}");
            foreach (var rule in group.Where(rule => rule.By.IsEmpty))
            {
                block.Labelled("      -", $"none exercises {rule.Statement.Info.Title} ({rule.Statement.Info.Location}): {Where(rule)}", 8);
            }
        }

        return block.ToString();
    }

    /// <summary>The name of a kind of rule.</summary>
    internal static string Name(RuleGroup group) => group switch
    {
        RuleGroup.Criterion => "criteria",
        RuleGroup.CalledFact => "ways to called facts",
        RuleGroup.Recipe => "numbers worked out",
        RuleGroup.Award => "points given and taken",
        RuleGroup.Limit => "caps and floors",
        RuleGroup.Exclusion => "what is left out",
        RuleGroup.Study => "studies",
        _ => "personal judgements",
    };

    private static string Where(ExercisedRule rule) => rule.Placements.IsEmpty
        ? "it has an effect nowhere"
        : $"it has its effect on {"placement".ToQuantity(rule.Placements.Length)}, {(rule.Placements.Length == 1 ? "" : "the first ")}{rule.Placements[0].Movement.Name} in {rule.Placements[0].Target.Name}";
}
