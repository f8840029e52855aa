using System.Globalization;
using CsCheck;

namespace ScoreRules.Tests.Guarding;

/// <summary>Random houses as rule text: up to six raises with two ratings and a place, two criteria, a called fact, points, a cap, an exclusion, tiers, a judgement, expectations.</summary>
internal static class SmallHouse
{
    private static readonly string[] Places = ["standing", "sitting"];

    private static Gen<string> Rules { get; } =
        from weights in Gen.Int[1, 40].Array[2]
        from points in Gen.Int[1, 15]
        from number in Gen.Int[1, 3]
        from borders in Gen.Int[1, 20].Array[2]
        from parts in Gen.Bool.Array[5]
        select string.Concat(Parts(weights, points, number, borders, parts));

    /// <summary>Houses that judge without errors.</summary>
    public static Gen<string> Any { get; } =
        from movements in Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4], Gen.Bool).Array[2, 6]
        from rules in Rules
        select Text(movements, rules);

    /// <summary>Two houses over the same words, movements and rules drawn apart.</summary>
    public static Gen<(string Old, string New)> Pairs { get; } = Gen.Select(Any, Any, (old, now) => (old, now));

    private static IEnumerable<string> Parts(int[] weights, int points, int number, int[] borders, bool[] parts) =>
    [
        Told($"tiers\n  High is from {borders[0]} points above the benchmark\n  Middle is from {borders[1]} points below the benchmark\n  Low is the rest\n\n"),
        Told($"criterion load\n  counts {weights[0]}\n  reads load\n  worth 0% at 0, 100% at 4\n\n"),
        Told($"criterion steady\n  counts {weights[1]}\n  reads steady\n  worth 0% at 0, 100% at 4\n\n"),
        Told($"call easy\n  when steady is at least {number} and posture is sitting\n\n"),
        parts[0] ? Told($"give {points} points\n  named ease\n  when easy\n\n") : "",
        parts[1] ? Told($"take {points} points\n  named hard\n  when load is more than {number}\n  except for raise b because so\n\n") : "",
        parts[2] ? Told($"never above Middle\n  named steady first\n  when steady is less than {number}\n\n") : "",
        parts[3] ? Told($"leave out\n  named too light\n  when load is 0 and posture is standing\n\n") : "",
        parts[4] ? "place raise b\n  one tier lower\n  because so\n\nexpect raise b is no higher than Middle\n\n" : "",
    ];

    private static string Text((int Load, int Steady, bool Sits)[] movements, string rules) => CalfHouse.Words.Replace("plain raise", "raise a", StringComparison.Ordinal)
        + string.Concat(movements.Select((one, index) => Told($"movement raise {(char)(97 + index)}\n  trains calves\n  load is {(index == 0 ? 2 : one.Load)}\n  steady is {one.Steady}\n  posture is {Places[one.Sits ? 1 : 0]}\n\n"))) + rules;

    private static string Told(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
