namespace ScoreRules.Mechanics.Bodies;

/// <summary>A turn in space: where it takes the three axes.</summary>
/// <param name="X">Image of the x axis.</param>
/// <param name="Y">Image of the y axis.</param>
/// <param name="Z">Image of the z axis.</param>
public readonly record struct Rotation(Vector3 X, Vector3 Y, Vector3 Z)
{
    /// <summary>No turn.</summary>
    public static Rotation None => new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>One turn after another: the right one is done first.</summary>
    public static Rotation operator *(Rotation after, Rotation before) => new(after.Of(before.X), after.Of(before.Y), after.Of(before.Z));

    /// <summary>About x, degrees; y goes towards z.</summary>
    public static Rotation AboutX(double degrees)
    {
        var (sin, cos) = Degrees.SinCos(degrees);
        return new(new(1, 0, 0), new(0, cos, sin), new(0, -sin, cos));
    }

    /// <summary>About y, degrees; z goes towards x.</summary>
    public static Rotation AboutY(double degrees)
    {
        var (sin, cos) = Degrees.SinCos(degrees);
        return new(new(cos, 0, -sin), new(0, 1, 0), new(sin, 0, cos));
    }

    /// <summary>About z, degrees; x goes towards y.</summary>
    public static Rotation AboutZ(double degrees)
    {
        var (sin, cos) = Degrees.SinCos(degrees);
        return new(new(cos, sin, 0), new(-sin, cos, 0), new(0, 0, 1));
    }

    /// <summary>The trunk in the room: rolled about its own fore-and-aft axis, then pitched; pitch forward and working side up are positive.</summary>
    /// <param name="pitchDegrees">0 upright, 90 face down, -90 face up.</param>
    /// <param name="rollDegrees">Positive with the working side up.</param>
    public static Rotation OfTrunk(double pitchDegrees, double rollDegrees) => AboutZ(-pitchDegrees) * AboutX(-rollDegrees);

    /// <summary>The image of a vector.</summary>
    public Vector3 Of(Vector3 vector) => (vector.X * X) + (vector.Y * Y) + (vector.Z * Z);
}
