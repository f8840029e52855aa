using ScoreRules.Answers.Lift;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>What would lift a movement, in words.</summary>
internal static class LiftWords
{
    /// <summary>The answer.</summary>
    public static AnswerPage Of(LiftAnswer answer) => new(
        answer,
        answer.Findings.IsEmpty ? [TargetWords.NotRanked(answer.Movement)] : [.. answer.Findings.Select(Section)],
        answer.Findings.Any(finding => finding.Found is not null) ? ChangeWords.Notes : []);

    private static AnswerSection Section(LiftFinding finding)
    {
        var obstacles = finding.IsThere ? [] : finding.Obstacles.Select(Obstacle);
        var changes = finding.Found is { } found ? ChangeWords.Lines(found, $"no change of up to three facts lifts it to {finding.Wanted!.Name}") : [];
        return new AnswerSection(finding.Explained.Row.Target.Name, Lead(finding), [.. obstacles, .. changes]);
    }

    private static string Lead(LiftFinding finding)
    {
        var name = finding.Explained.Row.Movement.Name;
        if (finding.Explained.Placement is not { } placement)
        {
            return $"{name} is left out. To reach {finding.Wanted!.Name} it would have to be let in first.";
        }

        if (finding.IsThere)
        {
            return finding.Wanted is null || placement.Tier.Index == finding.Wanted.Index ? $"{name} stands in {placement.Tier.Name} already{(placement.Tier.Index == 0 ? ", the best tier" : "")}." : $"{name} stands in {placement.Tier.Name}, which is better than {finding.Wanted.Name}.";
        }

        return finding.Found is null && finding.IsBenchmark
            ? $"{name} is the benchmark: all others are measured against it, so no fact of its own can lift it above itself."
            : $"{name} stands in {placement.Tier.Name}. {Lacks(finding)}";
    }

    private static string Lacks(LiftFinding finding)
    {
        var wanted = finding.Wanted!.Name;
        return finding.Need switch
        {
            double.NaN => $"What would lift it to {wanted}:",
            > 0 => $"It lacks {NumberText.Points(finding.Need)} points for {wanted}.",
            _ => $"It has the points for {wanted}; what holds it down must go first.",
        };
    }

    private static AnswerLine Obstacle(BoundStatement statement)
    {
        var why = statement.Info.Because is { } because ? $": \"{Sentences.Sentence(because)}\"" : "";
        var words = statement switch
        {
            LimitDefinition limit => $"{limit.Info.Title} keeps it at {limit.Tier.Name} or lower, whatever its points ({limit.Info.Location}){why}",
            ExclusionDefinition exclusion => $"{exclusion.Info.Title} leaves it out ({exclusion.Info.Location}){why}",
            _ => $"a personal judgement puts it one tier lower ({statement.Info.Location}){why}",
        };
        return AnswerLine.Of("In the way", words, new FiguresPart { Rule = JsonParts.Rule(statement.Info) });
    }
}
