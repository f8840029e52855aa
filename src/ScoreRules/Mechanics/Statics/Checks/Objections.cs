using System.Globalization;
using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>Shorthand for making findings.</summary>
internal static class Objections
{
    public static MechanicsFinding Refuse(FindingKind kind, string headline, string advice, JointMotion? motion = null) =>
        new(kind, FindingSeverity.Refused, headline, advice) { Motion = motion };

    public static MechanicsFinding Warn(FindingKind kind, string headline, string advice, JointMotion? motion = null) =>
        new(kind, FindingSeverity.Warning, headline, advice) { Motion = motion };

    /// <summary>A number as people write it: up to two decimals, the same in any culture.</summary>
    public static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
