namespace ScoreRules.Language.Binding;

/// <summary>Converts between units of one kind: time (s, min), mass (g, kg), length (mm, cm, m). Other units only to themselves.</summary>
public static class UnitConversion
{
    private static readonly (string Unit, string Kind, double Factor)[] Known =
    [
        ("s", "time", 1), ("min", "time", 60), ("g", "mass", 0.001), ("kg", "mass", 1), ("mm", "length", 0.001), ("cm", "length", 0.01), ("m", "length", 1),
    ];

    /// <summary>Converts a number; false when the units measure different things.</summary>
    /// <param name="number">The number in <paramref name="from"/>.</param>
    /// <param name="from">Its unit.</param>
    /// <param name="to">The unit wanted.</param>
    /// <param name="converted">The number in <paramref name="to"/>.</param>
    public static bool TryConvert(double number, string from, string to, out double converted)
    {
        if (string.Equals(from, to, StringComparison.OrdinalIgnoreCase))
        {
            converted = number;
            return true;
        }

        var source = Array.Find(Known, known => known.Unit.Equals(from, StringComparison.OrdinalIgnoreCase));
        var wanted = Array.Find(Known, known => known.Unit.Equals(to, StringComparison.OrdinalIgnoreCase));
        var convertible = source.Unit is not null && source.Kind == wanted.Kind;
        converted = convertible ? number * source.Factor / wanted.Factor : double.NaN;
        return convertible;
    }
}
