using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>What parts of statements say, written so that two that act alike are written alike, wherever they stand.</summary>
internal static class Saying
{
    /// <summary>A condition.</summary>
    public static string Of(Condition? condition) => condition switch
    {
        null => "",
        AttributeTest test => $"{NameText.Key(test.Attribute.Name)} {test.Comparison} {Of(test.Number)} {Of(test.High)} {Words(test.Attribute, test.Codes)}",
        CalledTest called => $"called {NameText.Key(called.Fact)}",
        AllOf all => $"all({Joined(all.Parts.Select(Of))})",
        AnyOf any => $"any({Joined(any.Parts.Select(Of))})",
        Unless unless => $"unless({Of(unless.Part)})",
        _ => "always",
    };

    /// <summary>What a statement is limited to, what it spares, what it overrides.</summary>
    public static string Of(StatementInfo info) => $"only {Of(info.OnlyFor)}, except {Of(info.ExceptFor)}, over {Joined(info.Overrides.Select(NameText.Key).Order(StringComparer.Ordinal))}";

    /// <summary>A number, to the last digit.</summary>
    public static string Of(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A number with its doubt.</summary>
    public static string Of(UncertainNumber? amount) => amount is null ? "" : $"{Of(amount.Number)} {amount.Shape} {Of(amount.Low)} {Of(amount.High)} {Of(amount.Spread)}";

    /// <summary>Targets by name, in no order.</summary>
    public static string Of(ImmutableArray<TargetDefinition> targets) => Joined(targets.Select(target => NameText.Key(target.Name)).Order(StringComparer.Ordinal));

    /// <summary>What a value is worth.</summary>
    public static string Of(WorthFunction worth, AttributeDefinition? attribute)
    {
        var points = worth.Points.IsDefaultOrEmpty ? "" : Joined(worth.Points.Select(point => $"{Of(point.At)}:{Of(point.Worth)}"));
        var words = worth.ByCode.IsDefaultOrEmpty || attribute is null ? "" : Joined(worth.ByCode.Select((of, code) => $"{NameText.Key(attribute.Values[code])}:{Of(of)}").Order(StringComparer.Ordinal));
        return $"{worth.IsStep} {points} {words}";
    }

    /// <summary>A fact.</summary>
    public static string Of(AttributeDefinition attribute, FactValue value) => !value.IsKnown ? "unknown"
        : attribute.IsWord ? Words(attribute, value.Codes) : $"{Of(value.Number)} {Of(value.Low)} {Of(value.High)}";

    /// <summary>A line of geometry.</summary>
    public static string Of(GeometryLine line) => line switch
    {
        GeometryLine.Angle angle => $"{Of(angle.Start)} {Of(angle.End)}",
        GeometryLine.Place place => $"{Of(place.Forward)} {Of(place.Up)} {Of(place.Out)}",
        GeometryLine.Load load => $"{Of(load.Amount)} {load.IsForce}",
        GeometryLine.Table table => Joined(table.Pairs.Select(pair => $"{Of(pair.At)}:{Of(pair.Value)}")),
        _ => line.ToString(),
    };

    /// <summary>Several things in their order.</summary>
    public static string Joined(IEnumerable<string> parts) => string.Join("; ", parts);

    private static string Of(ImmutableArray<ScopeEntry> entries) =>
        Joined(entries.Select(entry => entry.Target is { } target ? $"target {NameText.Key(target.Name)}" : $"movement {NameText.Key(entry.Movement!)}").Order(StringComparer.Ordinal));

    private static string Words(AttributeDefinition attribute, ImmutableArray<int> codes) =>
        codes.IsDefault ? "" : Joined(codes.Select(code => NameText.Key(attribute.Values[code])).Order(StringComparer.Ordinal));
}
