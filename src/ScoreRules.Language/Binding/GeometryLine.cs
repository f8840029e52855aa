using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>One thing that a movement states about its geometry or load.</summary>
/// <param name="Name">What it is about: a motion in its positive direction, such as "shoulder flexion", or "pulley", "foot line", "external load", "band", "cam radius".</param>
/// <param name="IsBut">Whether it is meant to replace an inherited one.</param>
/// <param name="Location">Where it stands.</param>
public abstract record GeometryLine(string Name, bool IsBut, SourceLocation Location)
{
    /// <summary>The angle of a motion over the lifting phase.</summary>
    /// <param name="Name">The motion in its positive direction.</param>
    /// <param name="Start">Degrees where the lifting phase begins; opposite motions are negative.</param>
    /// <param name="End">Degrees where it ends; equal to <paramref name="Start"/> for what is kept.</param>
    /// <param name="IsBut">Whether it is meant to replace an inherited one.</param>
    /// <param name="Location">Where it stands.</param>
    public sealed record Angle(string Name, double Start, double End, bool IsBut, SourceLocation Location) : GeometryLine(Name, IsBut, Location)
    {
        /// <summary>Whether the motion moves.</summary>
        public bool Moves => Start != End;
    }

    /// <summary>A place or a distance, in metres.</summary>
    /// <param name="Name">"pulley" (from the first moving joint in the start posture) or "foot line" (from the ankle along the foot).</param>
    /// <param name="Forward">Forward; backward is negative.</param>
    /// <param name="Up">Up; down is negative.</param>
    /// <param name="Out">To the working side; inward is negative.</param>
    /// <param name="IsBut">Whether it is meant to replace an inherited one.</param>
    /// <param name="Location">Where it stands.</param>
    public sealed record Place(string Name, double Forward, double Up, double Out, bool IsBut, SourceLocation Location) : GeometryLine(Name, IsBut, Location);

    /// <summary>A load: the whole weight or tension that one arm or leg moves, or that both share when the movement is bilateral.</summary>
    /// <param name="Name">"external load".</param>
    /// <param name="Amount">How much, 0 or more.</param>
    /// <param name="IsForce">Whether it is in newtons; else in kilograms.</param>
    /// <param name="IsBut">Whether it is meant to replace an inherited one.</param>
    /// <param name="Location">Where it stands.</param>
    public sealed record Load(string Name, double Amount, bool IsForce, bool IsBut, SourceLocation Location) : GeometryLine(Name, IsBut, Location);

    /// <summary>Measured pairs, rising in the first number.</summary>
    /// <param name="Name">"band" (length in m, pull in N) or "cam radius" (angle in degrees, radius in m).</param>
    /// <param name="Pairs">Two or more.</param>
    /// <param name="IsBut">Whether it is meant to replace an inherited one.</param>
    /// <param name="Location">Where it stands.</param>
    public sealed record Table(string Name, ImmutableArray<(double At, double Value)> Pairs, bool IsBut, SourceLocation Location) : GeometryLine(Name, IsBut, Location);
}
