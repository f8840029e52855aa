using System.Globalization;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Modelling;

/// <summary>Asks about ratings that mechanics puts somewhere else; only in a house's own movements, because the shared ones are not its to mend.</summary>
public static class RatingFindings
{
    /// <summary>Reports them.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="catalogue">Its movements.</param>
    /// <param name="derived">What mechanics derives.</param>
    /// <param name="findings">Receives SR7301.</param>
    public static void Report(BoundRuleset ruleset, MovementCatalogue catalogue, DerivedFactSource derived, DiagnosticBag findings)
    {
        var own = catalogue.Movements.Where(movement => movement is { IsWhole: true, Geometry.IsEmpty: false } && movement.Location.Source.IsOwn);
        foreach (var known in own.SelectMany(movement => movement.Trains.Select(target => derived.Of(movement, target, withIntervals: false))))
        {
            findings.AddRange(RatingComparison.Of(ruleset, known).Where(comparison => comparison.IsApart).Select(comparison => Finding(known, comparison)));
        }
    }

    private static Diagnostic Finding(DerivedMovement derived, RatingComparison comparison)
    {
        var (name, attribute) = (derived.Movement.Name, comparison.Attribute);
        var isHere = comparison.Rated.Location is { } location && location.Source.IsOwn;
        var place = isHere ? comparison.Rated.Location! : derived.Movement.Location;
        return new Diagnostic(
            "SR7301", Severity.Information,
            $"\"{attribute.Name}\" of \"{name}\" is rated {Number(comparison.Rated.Value.Number)}, and mechanics gives {Number(comparison.Derived)} of {Number(attribute.Scale.High)} for {derived.Target.Name}",
            new Label(place, isHere ? "rated by eye" : "takes this rating over"))
        {
            Within = $"movement \"{name}\"",
            Notes = [$"mechanics: {comparison.Fact.Fact.Name} is {Number(comparison.Fact.Value!.Value * 100)}%{(comparison.Fact.IsAssumed ? ", with an even load assumed" : "")}"],
            Suggestions = [new Suggestion($"look again at the rating and at joints and load: scorerules derive shows what mechanics sees in \"{name}\"")],
        };
    }

    private static string Number(double value) => Math.Round(value, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture);
}
