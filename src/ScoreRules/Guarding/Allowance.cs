using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>Warns when a house holds more personal judgements than it allows its authors.</summary>
internal static class Allowance
{
    /// <summary>Reports it.</summary>
    public static void Report(BoundRuleset ruleset, DiagnosticBag findings)
    {
        if (ruleset.House is { Judgements: { } allowed } house && ruleset.Places.Length > allowed)
        {
            findings.Add(new Diagnostic("SR5020", Severity.Warning, $"{ruleset.Places.Length} personal judgements stand here, and the house allows its authors {allowed}", new Label(ruleset.Places[allowed].Info.Location, "one too many"))
            {
                Others = [new Label(house.Info.Location, "the house")],
                Suggestions = [new Suggestion("turn a judgement into a rule that says why, or allow more")],
            });
        }
    }
}
