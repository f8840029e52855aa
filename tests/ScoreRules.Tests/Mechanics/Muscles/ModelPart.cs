using System.Globalization;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Tests.Support;
using Shouldly;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>Reads the reference tables of muscles in their own words: underscores for spaces, knee_angle for knee flexion.</summary>
internal static class ModelPart
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string table) => ReferenceTable.Rows($"mechanics/{table}.csv");

    public static MusclePart Named(string name) => MuscleModel.FindPart(name.Replace('_', ' ')).ShouldNotBeNull(name);

    public static JointCoordinate Coordinate(string name) =>
        Enum.Parse<JointCoordinate>(name.Replace("knee_angle", "knee_flexion", StringComparison.Ordinal).Replace("ankle_angle", "ankle_dorsiflexion", StringComparison.Ordinal).Replace("_", "", StringComparison.Ordinal), ignoreCase: true);

    /// <summary>One or two angles of the data as they stand, all others 0.</summary>
    public static JointCoordinates At(JointCoordinate first, double x, JointCoordinate? second = null, double y = 0)
    {
        double Of(JointCoordinate wanted) => wanted == first ? x : wanted == second ? y : 0;
        return new JointCoordinates(
            Of(JointCoordinate.HipFlexion), Of(JointCoordinate.HipAdduction), Of(JointCoordinate.KneeFlexion), Of(JointCoordinate.AnkleDorsiflexion),
            Of(JointCoordinate.ElbowFlexion), Of(JointCoordinate.ShoulderFlexion), Of(JointCoordinate.ShoulderPlane), Of(JointCoordinate.ShoulderElevation), 0);
    }

    public static JointCoordinates At(IReadOnlyDictionary<string, string> row) => row["q2"].Length > 0
        ? At(Coordinate(row["q1"]), Number(row["q1_deg"]), Coordinate(row["q2"]), Number(row["q2_deg"]))
        : At(Coordinate(row["q1"]), Number(row["q1_deg"]));

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    public static Posture Posture(params ReadOnlySpan<(JointMotion Motion, double Degrees)> angles) => Statics.Lifts.Posture(angles);
}
