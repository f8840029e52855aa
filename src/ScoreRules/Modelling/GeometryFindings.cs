using System.Collections.Frozen;
using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Checks;

namespace ScoreRules.Modelling;

/// <summary>
/// What the checks of mechanics find in the geometry of movements. What is refused is an error wherever it stands; a warning or
/// a missing number is told only about a house's own movements: the shared ones are not the house's to mend.
/// </summary>
public static class GeometryFindings
{
    /// <summary>Angles at which a curve is worked out for the checks; they look at its ends and its sign, not at its shape.</summary>
    private const int Steps = 13;

    private static readonly FrozenDictionary<FindingKind, string> Codes = new Dictionary<FindingKind, string>
    {
        [FindingKind.Range] = "SR7202",
        [FindingKind.BadNumber] = "SR7204",
        [FindingKind.Table] = "SR7205",
        [FindingKind.JointLimit] = "SR7207",
        [FindingKind.Method] = "SR7208",
        [FindingKind.Pulley] = "SR7209",
        [FindingKind.SignAtStart] = "SR7210",
        [FindingKind.HangingWeight] = "SR7211",
        [FindingKind.ChainSum] = "SR7212",
        [FindingKind.Balance] = "SR7213",
        [FindingKind.FootPath] = "SR7214",
    }.ToFrozenDictionary();

    /// <summary>Reports them.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="catalogue">Its movements.</param>
    /// <param name="findings">Receives SR7202 and SR7204 to SR7214.</param>
    public static void Report(BoundRuleset ruleset, MovementCatalogue catalogue, DiagnosticBag findings)
    {
        foreach (var model in MovementModels.Of(ruleset, catalogue).Where(model => model.Movement.IsWhole))
        {
            findings.AddRange(Of(model).Where(finding => finding.Severity == Severity.Error || model.Movement.Location.Source.IsOwn));
        }
    }

    private static IEnumerable<Diagnostic> Of(MovementModel model)
    {
        if (model.Mechanism is not { } mechanism)
        {
            return [Missing(model, model.Lacks, $"state {string.Join(", and ", model.Lacks)}")];
        }

        var profile = StaticSolver.Solve(mechanism, Steps);
        var missing = profile.Missing.Where(input => input.StopsTheCurve).ToList();
        return [.. profile.Findings.Select(finding => Told(model, finding)), .. missing.Take(1).Select(input => Missing(model, [input.Name], Advice(input.Gain)))];
    }

    private static Diagnostic Told(MovementModel model, MechanicsFinding finding) =>
        Make(model, Codes[finding.Kind], finding.Severity == FindingSeverity.Refused ? Severity.Error : Severity.Warning, finding.Headline.TrimEnd('.'), GeometryPlaces.Of(model, finding), Advice(finding.Advice));

    private static Diagnostic Missing(MovementModel model, ImmutableArray<string> what, string advice) =>
        Make(model, "SR7206", Severity.Information, $"The load on \"{model.Target.Name}\" in \"{model.Movement.Name}\" cannot be worked out: {string.Join(", ", what)} is not stated", new Label(model.Movement.Location, "not enough stated"), advice);

    private static Diagnostic Make(MovementModel model, string code, Severity severity, string headline, Label place, string advice) => new(code, severity, headline, place)
    {
        Within = $"movement \"{model.Movement.Name}\"",
        Suggestions = [new Suggestion(advice)],
    };

    // Mechanics writes sentences; advice in messages is a phrase behind "help:".
    private static string Advice(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.');
}
