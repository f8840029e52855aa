namespace ScoreRules.Publishing.Pictures;

/// <summary>A place in a picture, or a way from one to another: x to the right, y down.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
internal readonly record struct Spot(double X, double Y)
{
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    public static Spot operator +(Spot left, Spot right) => new(left.X + right.X, left.Y + right.Y);

    public static Spot operator -(Spot left, Spot right) => new(left.X - right.X, left.Y - right.Y);

    public static Spot operator *(double factor, Spot spot) => new(factor * spot.X, factor * spot.Y);

    public double Dot(Spot other) => (X * other.X) + (Y * other.Y);

    public Spot Unit() => Length > 0 ? (1 / Length) * this : this;
}
