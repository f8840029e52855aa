using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>Reads statics-geometry.csv: one movement a row, as a mechanism.</summary>
internal static class GeometryRows
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> All { get; } = ReferenceTable.Rows("mechanics/statics-geometry.csv");

    public static JointMotion Joint(string name) => Enum.Parse<JointMotion>(name.Replace("_", "", StringComparison.Ordinal), ignoreCase: true);

    /// <summary>The method a row names; what it takes as even for want of a cam is null.</summary>
    public static MomentMethod? Method(string name) => name switch
    {
        "open_arm" => MomentMethod.OpenArm,
        "open_leg" => MomentMethod.OpenLeg,
        "inline" => MomentMethod.InLine,
        "grf" => MomentMethod.FootReaction,
        "sled" => MomentMethod.Sled,
        "hinge" or "back_ext" => MomentMethod.TrunkOverHips,
        "bridge" or "ball_curl" => MomentMethod.Bridge,
        "nordic" or "lean_back" => MomentMethod.BodyOverKnees,
        "calf" => MomentMethod.CalfLever,
        _ => null,
    };

    public static Mechanism Mechanism(IReadOnlyDictionary<string, string> row)
    {
        var (start, end) = (Trunk(row, "trunk_pitch_start_deg"), Trunk(row, "trunk_pitch_end_deg"));
        foreach (var (motion, degrees) in Pairs(row["fixed_joint_angles_deg"], ':'))
        {
            (start, end) = (start.With(Joint(motion), Number(degrees)), end.With(Joint(motion), Number(degrees)));
        }

        var moving = Pairs(row["moving_joints_used_deg"], ':').ToList();
        foreach (var (motion, range) in moving)
        {
            var ends = range.Split('>');
            (start, end) = (start.With(Joint(motion), Number(ends[0])), end.With(Joint(motion), Number(ends[1])));
        }

        var working = Joint(row["moment_joint"]);
        return new Mechanism
        {
            Start = start,
            End = end,
            Moving = [.. moving.Select(pair => Joint(pair.Item1))],
            WorkingJoint = working,
            Method = Method(row["method"]) ?? (working < JointMotion.HipFlexion ? MomentMethod.OpenArm : row["load_point"] == "pelvis" ? MomentMethod.Bridge : MomentMethod.OpenLeg),
            Resistance = Resistance(row),
            LoadPoint = Enum.Parse<LoadPoint>(row["load_point"].Replace("_", "", StringComparison.Ordinal), ignoreCase: true),
            BodyShare = row["load_point"] == "body" && working < JointMotion.HipFlexion ? 0 : null,
            IsUpperArmSupported = row["movement"].StartsWith("preacher", StringComparison.Ordinal),
            IsHeldUpright = row["line_of_pull"] == "along_track" || row["missing_columns_and_assumptions"].Contains("stance_length_m", StringComparison.Ordinal),
        };
    }

    private static Posture Trunk(IReadOnlyDictionary<string, string> row, string column) =>
        Lifts.Posture((JointMotion.TrunkPitch, Number(row[column])), (JointMotion.TrunkRoll, Number(row["trunk_roll_deg"])));

    // A load of 0 kg on a sled or machine means that none is recorded; a body lift may really carry nothing.
    private static Resistance Resistance(IReadOnlyDictionary<string, string> row)
    {
        var load = Number(row["default_load"].Split(' ')[0]);
        double? stated = load == 0 ? null : load;
        var isBody = row["load_point"] == "body" || (load == 0 && row["line_of_pull"] == "gravity" && row["load_point"] != "thigh");
        return row["line_of_pull"] switch
        {
            "to_pulley" => new Resistance.Cable(load, Place(row)),
            "to_anchor" => new Resistance.Band(null, Place(row)),
            "perpendicular_to_lever" => new Resistance.Cam(stated, null),
            "along_track" when row["method"] == "sled" || row["load_point"] == "foot" => new Resistance.Sled(stated, row["movement"] == "hack-squat" ? 60 : 45),
            _ => isBody ? new Resistance.BodyWeight(load) : new Resistance.Weight(stated),
        };
    }

    private static Vector3 Place(IReadOnlyDictionary<string, string> row)
    {
        var parts = row["pulley_from_joint_m"].Split(';').Select(Number).ToImmutableArray();
        return new Vector3(parts[0], parts[1], parts[2]);
    }

    private static IEnumerable<(string, string)> Pairs(string list, char between) =>
        list.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(pair => (pair[..pair.IndexOf(between, StringComparison.Ordinal)], pair[(pair.IndexOf(between, StringComparison.Ordinal) + 1)..]));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
