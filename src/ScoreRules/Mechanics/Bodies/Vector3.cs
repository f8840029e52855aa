namespace ScoreRules.Mechanics.Bodies;

/// <summary>A point or a direction in the room or in a segment, double precision: x forward, y up, z to the working side.</summary>
/// <param name="X">Forward.</param>
/// <param name="Y">Up.</param>
/// <param name="Z">To the working side; the frame is right-handed.</param>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>Nowhere, or no force.</summary>
    public static Vector3 Zero => default;

    /// <summary>The direction of gravity.</summary>
    public static Vector3 Down => new(0, -1, 0);

    /// <summary>Length, in the unit of the parts.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>Whether each part is a finite number.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z);

    /// <summary>Sum.</summary>
    public static Vector3 operator +(Vector3 left, Vector3 right) => new(left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    /// <summary>Difference.</summary>
    public static Vector3 operator -(Vector3 left, Vector3 right) => new(left.X - right.X, left.Y - right.Y, left.Z - right.Z);

    /// <summary>Opposite.</summary>
    public static Vector3 operator -(Vector3 vector) => new(-vector.X, -vector.Y, -vector.Z);

    /// <summary>Scaled.</summary>
    public static Vector3 operator *(double factor, Vector3 vector) => new(factor * vector.X, factor * vector.Y, factor * vector.Z);

    /// <summary>Scalar product.</summary>
    public double Dot(Vector3 other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product.</summary>
    public Vector3 Cross(Vector3 other) => new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>The same direction with length 1; zero stays zero.</summary>
    public Vector3 Unit() => Length is > 0 and var length ? (1 / length) * this : Zero;
}
