using ScoreRules.Certainty;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>How sure placements are, in words beside the number of tries in a hundred.</summary>
internal static class CertaintyText
{
    private const int BarWidth = 10;

    /// <summary>"More often than not: 67 of 100 tries land here, 33 lower."</summary>
    public static string Of(PlacementCertainty certainty, BoundRuleset ruleset)
    {
        var parts = new List<string> { $"{OfHundred(certainty.Here)} of 100 tries land here" };
        AddShare(parts, certainty.Higher, "higher");
        AddShare(parts, certainty.Lower, "lower");
        var said = $"{Word(certainty.Here)}: {string.Join(", ", parts)}.";
        var likeliest = certainty.Likeliest;
        return likeliest == certainty.Placement.Tier.Index ? said
            : $"{said} More tries land in {ruleset.Tiers[likeliest].Name} ({OfHundred(certainty.Tiers[likeliest])}) than here. Read it as a spread.";
    }

    /// <summary>The same in a few words, for a list: "67 of 100 here, 33 lower".</summary>
    public static string Short(PlacementCertainty certainty)
    {
        var parts = new List<string> { $"{OfHundred(certainty.Here)} of 100 here" };
        AddShare(parts, certainty.Higher, "higher");
        AddShare(parts, certainty.Lower, "lower");
        return string.Join(", ", parts);
    }

    /// <summary>"8 tries in 10 fall between +8.9 and +12.0."</summary>
    public static string Span(PlacementCertainty certainty) => $"8 tries in 10 fall between {NumberText.Signed(certainty.Low)} and {NumberText.Signed(certainty.High)}";

    /// <summary>A bar of ten marks: what lands higher, here, lower.</summary>
    public static string Bar(PlacementCertainty certainty)
    {
        var (higher, lower) = (Marks(certainty.Higher), Marks(certainty.Lower));
        return new string('-', higher) + new string('=', Math.Max(0, BarWidth - higher - lower)) + new string('-', lower);
    }

    /// <summary>How two movements compare: "not really different: ahead in 53 of 100 tries".</summary>
    public static string Ahead(double share)
    {
        var most = Math.Max(share, 1 - share);
        var word = most switch { <= 0.55 => "not really different", < 0.8 => "a little more often ahead", < 0.95 => "usually ahead", _ => "almost always ahead" };
        return $"{word}, in {OfHundred(share)} of 100 tries";
    }

    /// <summary>A word for a share of tries in the printed tier.</summary>
    public static string Word(double share) => Rounding.Printed(share * 100, 0) switch
    {
        >= 95 => "Almost always",
        >= 80 => "Usually",
        >= 60 => "More often than not",
        >= 40 => "About half the time",
        >= 20 => "Less often than not",
        _ => "Seldom",
    };

    /// <summary>How many placements of a target hold in 60 or more tries of 100, and what the benchmark's own doubt does.</summary>
    /// <param name="target">The target.</param>
    /// <param name="judgement">The house.</param>
    public static string Summary(TargetCertainty target, Judgement judgement)
    {
        var others = target.Placements.Where(certainty => !certainty.Placement.IsBenchmark).ToList();
        var holding = others.Count(certainty => Rounding.Printed(certainty.Here * 100, 0) >= 60);
        return $"Of {NumberText.Count(others.Count)} placements, {NumberText.Count(holding)} land in their own tier in 60 or more tries of 100; read the others as a spread.{Benchmark(target, judgement)}";
    }

    // Every gap leans on the benchmark, so its own doubt is said aloud.
    private static string Benchmark(TargetCertainty target, Judgement judgement) =>
        target.Ranking.Benchmark is { } benchmark && judgement.Evidence?.Of(benchmark).Deviation is { } deviation && double.IsFinite(deviation)
            ? $" The {benchmark.Movement.Name} itself is known give or take {NumberText.Points(deviation)} points, and every gap leans on it." : "";

    /// <summary>A share as tries of a hundred; "over 99" for nearly all, "under 1" for hardly any.</summary>
    public static string OfHundred(double share) => share switch
    {
        1 => "100",
        > 0.995 => "over 99",
        0 => "0",
        < 0.005 => "under 1",
        _ => NumberText.Whole(share * 100),
    };

    private static int Marks(double share) => (int)Rounding.Printed(share * BarWidth, 0);

    private static void AddShare(List<string> parts, double share, string where)
    {
        if (share >= 0.005)
        {
            parts.Add($"{OfHundred(share)} {where}");
        }
    }
}
