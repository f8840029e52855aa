using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Muscles.Surfaces;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>
/// One line of pull of a muscle. Its length depends on one or two angles and on nothing else: not on rotation about the long axis of a
/// limb, nor on joints that it crosses but that were not varied when the data were made (such as the knee for gracilis).
/// </summary>
public sealed class MusclePart
{
    private readonly ILengthSurface surface;
    private readonly ILengthDomain domain;
    private readonly bool isSagittal;

    internal MusclePart(string name, CoordinateRange first, CoordinateRange? second, double shortest, double longest, Reliability reliability, ILengthSurface lengths)
    {
        (Name, First, Second, Shortest, Longest, Reliability) = (name, first, second, shortest, longest, reliability);
        isSagittal = first.Coordinate == JointCoordinate.ShoulderFlexion;
        IsOfShoulderDirection = first.Coordinate == JointCoordinate.ShoulderPlane;
        surface = IsOfShoulderDirection ? new ShoulderSurface(lengths) : lengths;
        domain = IsOfShoulderDirection && second is { } elevation ? new ShoulderDomain(first, elevation) : new BoxDomain(first, second);
    }

    /// <summary>Name in the data, such as <c>glmax1</c> or <c>triceps long</c>.</summary>
    public string Name { get; }

    /// <summary>First angle and its range.</summary>
    public CoordinateRange First { get; }

    /// <summary>Second angle and its range, where there is one.</summary>
    public CoordinateRange? Second { get; }

    /// <summary>Shortest length over the ranges of its angles, metres.</summary>
    public double Shortest { get; }

    /// <summary>Longest length over the ranges of its angles, metres; a corner such as hip 120 with a straight knee counts, though few reach it.</summary>
    public double Longest { get; }

    /// <summary>How far it can be relied on.</summary>
    public Reliability Reliability { get; }

    /// <summary>Whether its angles are plane and elevation of the upper arm.</summary>
    internal bool IsOfShoulderDirection { get; }

    /// <summary>Whether its length is known to depend on a motion.</summary>
    /// <param name="motion">The motion.</param>
    public bool Crosses(JointMotion motion) => First.Coordinate.DependsOn(motion) || Second?.Coordinate.DependsOn(motion) == true;

    /// <summary>Length in a posture. Angles outside of the ranges take the nearest inside; the result tells by how much.</summary>
    public PartLength LengthAt(in JointCoordinates at)
    {
        var place = domain.Place(at);
        var metres = surface.LengthAt(place.X, place.Y);
        return new PartLength(metres, (metres - Shortest) / (Longest - Shortest), place.First, place.Second, isSagittal ? at.OffSagittal : 0);
    }

    /// <summary>Length in a posture; see <see cref="LengthAt(in JointCoordinates)"/>.</summary>
    public PartLength LengthAt(Posture posture) => LengthAt(JointCoordinates.Of(posture));

    /// <summary>
    /// Moment arm about an angle of the data, with the sign of that angle: from the slope of the polynomial, or a central difference where a
    /// table is used.
    /// </summary>
    /// <returns>None when the length is not known over that angle.</returns>
    public MomentArm? MomentArmAbout(JointCoordinate coordinate, in JointCoordinates at)
    {
        var place = domain.Place(at);
        var slope = surface.SlopeAt(place.X, place.Y);
        double? rate = coordinate == First.Coordinate ? slope.X : coordinate == Second?.Coordinate ? slope.Y : null;
        return rate is { } metres ? MomentArm.Of(-metres, Reliability, Excess.Worse(place.First, place.Second)) : null;
    }

    /// <summary>Moment arm about an anatomical motion, positive when shortening increases that angle.</summary>
    /// <returns>None when the length is not known over that motion.</returns>
    public MomentArm? MomentArmAbout(JointMotion motion, in JointAngles angles) =>
        IsOfShoulderDirection ? ShoulderMomentArm.About(this, motion, angles) : MomentArmAbout(motion, JointCoordinates.Of(angles));

    /// <summary>Moment arm in a posture; see <see cref="MomentArmAbout(JointMotion, in JointAngles)"/>.</summary>
    public MomentArm? MomentArmAbout(JointMotion motion, Posture posture) => MomentArmAbout(motion, JointAngles.Of(posture));

    /// <summary>Slope of the length over its two angles at the nearest known place, metres a radian, and how far that is off.</summary>
    internal (Slope Slope, Excess Worst) SlopeAt(in JointCoordinates at)
    {
        var place = domain.Place(at);
        return (surface.SlopeAt(place.X, place.Y), Excess.Worse(place.First, place.Second));
    }

    private MomentArm? MomentArmAbout(JointMotion motion, in JointCoordinates at) => motion switch
    {
        JointMotion.HipFlexion => MomentArmAbout(JointCoordinate.HipFlexion, at),
        JointMotion.HipAbduction => MomentArmAbout(JointCoordinate.HipAdduction, at)?.Reversed(),
        JointMotion.KneeFlexion => MomentArmAbout(JointCoordinate.KneeFlexion, at),
        JointMotion.AnkleDorsiflexion => MomentArmAbout(JointCoordinate.AnkleDorsiflexion, at),
        JointMotion.ElbowFlexion => MomentArmAbout(JointCoordinate.ElbowFlexion, at),
        JointMotion.ShoulderFlexion => MomentArmAbout(JointCoordinate.ShoulderFlexion, at),
        _ => null,
    };
}
