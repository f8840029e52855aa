using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>How far facts move when one input at a time is off.</summary>
/// <param name="Intervals">One for each of <see cref="DerivedFacts.All"/>; none where there is no value. Empty when not asked for.</param>
/// <param name="Tried">How many changes were made.</param>
/// <param name="Failed">How many gave no curve, though the movement has one.</param>
internal sealed record Spread(FactInterval?[] Intervals, int Tried, int Failed)
{
    public static Spread None { get; } = new([], 0, 0);

    public static Spread Of(Working middle, MomentProfile profile, bool isEven)
    {
        var intervals = DerivedFacts.All.Select(fact => fact.Compute(middle) is { } value ? new FactInterval(value, value) : (FactInterval?)null).ToArray();
        var (tried, failed) = (0, 0);
        foreach (var variation in Variations.Of(profile))
        {
            var varied = StaticSolver.Solve(variation.Mechanism);
            var sweep = variation.Moves is { } motion && middle.Sweep.Target.Muscles.Any(muscle => muscle.Crosses(motion)) ? LengthSweep.Of(variation.Mechanism, middle.Sweep.Target) : middle.Sweep;
            Widen(intervals, Working.Of(varied, sweep, isEven, middle.Support));
            tried++;
            failed += varied.Curve is null && profile.Curve is not null ? 1 : 0;
        }

        return new Spread(intervals, tried, failed);
    }

    private static void Widen(FactInterval?[] intervals, Working varied)
    {
        for (var i = 0; i < intervals.Length; i++)
        {
            if (intervals[i] is { } interval && DerivedFacts.All[i].Compute(varied) is { } value)
            {
                intervals[i] = interval.With(value);
            }
        }
    }
}
