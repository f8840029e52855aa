using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Statics.Preparing;

/// <summary>The slope of a sled's track.</summary>
internal static class Slope
{
    /// <summary>Part of a weight that runs along the track; 1 while the slope is not stated, because only the shape is known then.</summary>
    public static double Sine(Resistance.Sled sled) => sled.SlopeDegrees is { } slope ? Degrees.Sin(slope) : 1;
}
