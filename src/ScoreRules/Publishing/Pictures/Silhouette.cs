using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Figures;

namespace ScoreRules.Publishing.Pictures;

/// <summary>A figure with its width: limbs beside the trunk, and both sides where both work and a view shows them.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Arms">One arm, or both.</param>
/// <param name="Legs">One leg, or both.</param>
/// <param name="Loads">One load, or one a side.</param>
/// <param name="Joints">The working joint, or both.</param>
/// <param name="Shoulders">Both shoulders; empty from the side.</param>
/// <param name="Hips">Both hips; empty from the side.</param>
internal sealed record Silhouette(
    BodyFigure Figure, ImmutableArray<LimbLine> Arms, ImmutableArray<LimbLine> Legs, ImmutableArray<LoadLine> Loads, ImmutableArray<Vector3> Joints, ImmutableArray<Vector3> Shoulders, ImmutableArray<Vector3> Hips)
{
    // Half the width of shoulders and hips, m, for a stature of 1.80 m; for looks only.
    private const double HalfShoulders = 0.20;
    private const double HalfHips = 0.12;

    // Room for an arrow with its word, m.
    private const double LoadReach = 0.55;

    public static Silhouette Of(BodyFigure figure, Viewpoint from, bool bothSides)
    {
        if (from == Viewpoint.Side)
        {
            return new Silhouette(figure, [figure.Arm], [figure.Leg], figure.Load is { } seen ? [seen] : [], [figure.Joint], [], []);
        }

        var (armOut, legOut) = (HalfShoulders * figure.Trunk.Z, HalfHips * figure.Trunk.Z);
        var isArm = figure.Arm.IsStated;
        var (arm, leg) = (Moved(figure.Arm, armOut), Moved(figure.Leg, legOut));
        var joint = figure.Joint + (isArm ? armOut : legOut);
        var load = figure.Load is { } pulls ? pulls with { At = pulls.At + (pulls.Kind == LoadKind.BodyWeight ? Vector3.Zero : isArm ? armOut : legOut) } : null;
        var (rest, other) = (Other(figure, arm), Other(figure, leg));
        return new Silhouette(
            figure,
            bothSides ? [arm, rest] : [arm],
            [leg, other],
            load is null ? [] : bothSides && load.Kind != LoadKind.BodyWeight ? [load, Other(figure, load)] : [load],
            bothSides ? [joint, Mirrored(figure, joint)] : [joint],
            [figure.Shoulder + armOut, figure.Shoulder - armOut],
            [figure.Hip + legOut, figure.Hip - legOut]);
    }

    /// <summary>All points that have to fit into a picture.</summary>
    public IEnumerable<Vector3> Points(Viewpoint from) =>
        [Figure.Hip, Figure.Shoulder, Figure.Head, .. Arms.SelectMany(arm => arm.Joints), .. from == Viewpoint.Above ? [] : Legs.SelectMany(leg => leg.Joints), .. Shoulders, .. Hips, .. Loads.Select(load => load.At + (LoadReach * load.Direction))];

    private static LimbLine Moved(LimbLine limb, Vector3 by) => limb with { Joints = [.. limb.Joints.Select(joint => joint + by)] };

    private static LimbLine Other(BodyFigure figure, LimbLine limb) => limb with { Joints = [.. limb.Joints.Select(joint => Mirrored(figure, joint))] };

    private static LoadLine Other(BodyFigure figure, LoadLine load) =>
        load with { At = Mirrored(figure, load.At), Direction = load.Direction - (2 * load.Direction.Dot(figure.Trunk.Z) * figure.Trunk.Z) };

    private static Vector3 Mirrored(BodyFigure figure, Vector3 point) => point - (2 * (point - figure.Hip).Dot(figure.Trunk.Z) * figure.Trunk.Z);
}
