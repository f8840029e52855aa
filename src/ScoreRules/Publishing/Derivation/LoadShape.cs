using System.Collections.Immutable;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Statics.Curves;

namespace ScoreRules.Publishing.Derivation;

/// <summary>The load and the muscle lengths of a movement over its range, ready to be drawn.</summary>
/// <param name="Angles">Angle of the working joint at each step, degrees.</param>
/// <param name="Moments">Moment at each step, N m, negative where the load helps; null without a curve.</param>
/// <param name="Load">Moment / peak at each step, below 0 where the load helps; null without a curve and without an even load.</param>
/// <param name="IsAssumed">Whether the load is an even one that the house accepts.</param>
/// <param name="Lengths">The muscles.</param>
/// <param name="IsLongAtStart">At which end the greater part of the target is long.</param>
public sealed record LoadShape(ImmutableArray<double> Angles, ImmutableArray<double>? Moments, ImmutableArray<double>? Load, bool IsAssumed, ImmutableArray<LengthCurve> Lengths, bool IsLongAtStart)
{
    /// <summary>The shape of what is derived.</summary>
    /// <param name="facts">The facts.</param>
    public static LoadShape Of(MovementFacts facts)
    {
        var (mechanism, curve) = (facts.Profile.Mechanism, facts.Profile.Curve);
        var (start, end) = (mechanism.Start[mechanism.WorkingJoint], mechanism.End[mechanism.WorkingJoint]);
        var angles = Enumerable.Range(0, MomentCurve.Steps).Select(step => start + ((end - start) * step / (MomentCurve.Steps - 1))).ToImmutableArray();
        var lengths = LengthCurve.Of(mechanism, facts.Target);
        var isAssumed = curve is null && facts["evenness of load"] is { Value: not null, IsAssumed: true };
        var peak = curve is null ? 0 : Peaks.Of(curve).Moment;
        ImmutableArray<double>? load = isAssumed ? [.. angles.Select(_ => 1.0)] : peak > 0 ? [.. curve!.Points.Select(point => point.Moment / peak)] : null;
        return new LoadShape(
            angles, curve is null ? null : [.. curve.Points.Select(point => point.Moment)], load, isAssumed, lengths,
            lengths.IsEmpty || lengths.Where(length => length.IsLongAtStart).Sum(length => length.Share) >= 0.5);
    }

    /// <summary>Mean length of the muscles by share, at each step; null without muscles.</summary>
    public ImmutableArray<double>? MeanLength => Lengths.IsEmpty ? null : [.. Enumerable.Range(0, Angles.Length).Select(step => Lengths.Sum(length => length.Share * length.Lengths[step]))];
}
