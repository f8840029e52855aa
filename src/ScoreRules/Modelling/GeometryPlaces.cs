using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Mechanics.Statics.Checks;

namespace ScoreRules.Modelling;

/// <summary>The line of rule text that a finding of mechanics is about.</summary>
internal static class GeometryPlaces
{
    /// <summary>The line of its joint, pulley or table; the movement itself where no single line is at fault.</summary>
    public static Label Of(MovementModel model, MechanicsFinding finding)
    {
        var line = finding.Motion is { } motion
            ? model.Movement.Geometry.FirstOrDefault(line => line.Name == Motions.WordOf(motion))
            : model.Movement.Geometry.FirstOrDefault(line => IsAbout(line, finding.Kind));
        return line is null ? new Label(model.Movement.Location, "this movement") : new Label(line.Location, Word(finding.Kind));
    }

    private static bool IsAbout(GeometryLine line, FindingKind kind) => kind switch
    {
        FindingKind.Pulley => line.Name == "pulley",
        FindingKind.Table => line is GeometryLine.Table,
        _ => false,
    };

    private static string Word(FindingKind kind) => kind switch
    {
        FindingKind.JointLimit => "near or past the end of the joint",
        FindingKind.Range => "the other way round",
        FindingKind.SignAtStart => "begins here",
        _ => "does not fit",
    };
}
