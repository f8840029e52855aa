using ScoreRules.Catalogue;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>Finds the movement of the catalogue that a row of statics-geometry.csv means.</summary>
internal static class GeometryNames
{
    // Movements that have another name in the catalogue than in the geometry.
    private static readonly Dictionary<string, string> Renamed = new(StringComparer.Ordinal)
    {
        ["spider curl"] = "chest-supported curl",
        ["seated cable fly"] = "supported cable fly",
        ["cable fly"] = "standing cable fly",
        ["lat pulldown pronated"] = "wide-grip pulldown",
        ["lat pulldown neutral"] = "neutral-grip pulldown",
        ["pulldown behind neck"] = "behind-neck pulldown",
        ["press behind neck"] = "behind-neck press",
        ["rear delt dumbbell raise"] = "bent-over rear-deltoid raise",
        ["chest supported rear raise"] = "chest-supported rear-deltoid raise",
        ["hip extension 45"] = "45-degree hip extension",
        ["hip extension 45 glute"] = "45-degree glute extension",
        ["single arm pressdown"] = "one-arm pressdown",
        ["single arm overhead cable extension"] = "one-arm overhead cable extension",
        ["single arm pulldown"] = "one-arm pulldown",
        ["single leg press"] = "one-leg press",
        ["single leg romanian deadlift"] = "one-leg romanian deadlift",
        ["single leg hip thrust"] = "one-leg hip thrust",
        ["single leg calf raise"] = "one-leg calf raise",
        ["single leg dumbbell calf raise"] = "one-leg dumbbell calf raise",
        ["bent knee single leg calf raise"] = "bent-knee one-leg calf raise",
    };

    public static Movement Find(string row)
    {
        var name = row.Replace('-', ' ');
        var plain = Renamed.GetValueOrDefault(name, name).Replace('-', ' ');
        return Judged.Longreach.Catalogue.Movements.Single(movement => movement.Name.Replace('-', ' ') == plain);
    }
}
