using System.Collections.Immutable;
using ScoreRules.Guarding.Breaking;
using ScoreRules.Guarding.Exercising;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Guards;

namespace ScoreRules.Publishing.Json;

/// <summary>Breakages and exercised rules as parts of the documents.</summary>
internal static class GuardParts
{
    /// <summary>Breakages.</summary>
    public static BreakagesPart Breakages(BreakageReport report) => new(
        report.Outcomes.Length, report.Moved, report.Noticed, report.Score,
        [.. report.Outcomes.Where(outcome => outcome.Effect is BreakageEffect.Noticed or BreakageEffect.Unnoticed).Select(Breakage)],
        [.. report.Pins.Pins.Select(BreakageWords.Pin)], report.Pins.IsSmallest);

    /// <summary>Rules with the expectations that exercise them.</summary>
    public static ImmutableArray<ExercisedPart> Exercised(IEnumerable<ExercisedRule> rules) =>
        [.. rules.Select(rule => new ExercisedPart(CoverageText.Name(rule.Group), rule.Placements.Length, Written(rule.By), JsonParts.Rule(rule.Statement.Info)))];

    private static BreakagePart Breakage(BreakageOutcome outcome) => new(
        BreakageWords.Title(outcome.Breakage), outcome.Breakage.Location.Path, outcome.Breakage.Location.Line,
        [.. outcome.Moved.Select(BreakageWords.Move)], Written(outcome.NoticedBy));

    private static ImmutableArray<string> Written(IEnumerable<ExpectationDefinition> expectations) => [.. expectations.Select(expectation => expectation.Info.Location.Text)];
}
