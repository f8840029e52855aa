namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>One or two angles, each with its own range.</summary>
/// <param name="first">First angle.</param>
/// <param name="second">Second angle, where there is one.</param>
internal sealed class BoxDomain(CoordinateRange first, CoordinateRange? second) : ILengthDomain
{
    /// <inheritdoc/>
    public Placement Place(in JointCoordinates at)
    {
        var x = first.Clamp(at[first.Coordinate], out var firstExcess);
        return second is { } range
            ? new Placement(x, range.Clamp(at[range.Coordinate], out var secondExcess), firstExcess, secondExcess)
            : new Placement(x, 0, firstExcess, firstExcess with { Degrees = 0 });
    }
}
