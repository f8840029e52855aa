using System.Collections.Immutable;
using Humanizer;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing;

/// <summary>Facts in words.</summary>
internal static class FactText
{
    /// <summary>The value alone: "3 of 4", "45 s", "cable column, dumbbells", "nothing", "not recorded".</summary>
    public static string Value(AttributeDefinition attribute, FactValue value)
    {
        if (!value.IsKnown)
        {
            return "not recorded";
        }

        return attribute.Kind switch
        {
            AttributeKind.Rating => $"{NumberText.Plain(value.Number)} of {NumberText.Plain(attribute.Scale.High)}",
            AttributeKind.Measure => NumberText.Plain(Tiering.Rounding.Printed(value.Number, attribute.IsWorkedOut ? 1 : 6)) + Unit(attribute.Unit),
            _ => value.Codes.IsEmpty ? "nothing" : string.Join(", ", value.Codes.Select(code => attribute.Values[code])),
        };
    }

    /// <summary>The value with what a rating step means: "rated 3 of 4: most of the peak".</summary>
    public static string Told(AttributeDefinition attribute, CatalogueFact fact)
    {
        var verb = !fact.Value.IsKnown ? "" : attribute.Kind == AttributeKind.Rating ? "rated " : "";
        var meaning = fact.Value.IsKnown ? Anchor(attribute, fact.Value.Number) : null;
        return $"{verb}{Value(attribute, fact.Value)}{(meaning is null ? "" : $", {meaning}")}{Origin(fact)}";
    }

    /// <summary>Where a fact comes from, if that is worth saying: behind a comma.</summary>
    public static string Origin(CatalogueFact fact) => fact.Origin switch
    {
        FactOrigin.Guessed => ", at a guess",
        FactOrigin.Derived => ", derived",
        FactOrigin.DerivedOnAssumption => ", derived with an even load assumed",
        FactOrigin.Inherited => $", inherited from {fact.InheritedFrom}",
        FactOrigin.WorkedOut => ", worked out",
        FactOrigin.Computed => ", computed",
        FactOrigin.Profile => ", from the profile",
        _ => "",
    };

    /// <summary>What a rating step means, or null.</summary>
    public static string? Anchor(AttributeDefinition attribute, double step)
    {
        var anchor = attribute.Anchors.FirstOrDefault(anchor => anchor.Step == step);
        return attribute.Kind == AttributeKind.Rating ? anchor.Text : null;
    }

    /// <summary>Names joined for a sentence: "a, b and c".</summary>
    public static string Join(IEnumerable<string> names)
    {
        var all = names.ToImmutableArray();
        return all.Length < 3 ? all.Humanize("and") : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    private static string Unit(string? unit) => unit switch
    {
        null or "" => "",
        "°" => "°",
        _ => $" {unit}",
    };
}
