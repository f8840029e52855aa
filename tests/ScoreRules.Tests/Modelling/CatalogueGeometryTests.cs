using System.Globalization;
using System.Text;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Checks;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Modelling;
using ScoreRules.Tests.Mechanics.Statics;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Modelling;

/// <summary>The shipped catalogue, read from rule text, against the geometry that stands outside the repository's own files.</summary>
public sealed class CatalogueGeometryTests
{
    private static readonly Dictionary<string, MovementModel> Models = MovementModels.Of(Judged.Longreach.Ruleset, Judged.Longreach.Catalogue)
        .GroupBy(model => model.Movement.Name, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);

    public static TheoryData<string> Names() => [.. GeometryRows.All.Select(row => row["movement"])];

    [Theory]
    [MemberData(nameof(Names))]
    public void Rule_text_leads_to_the_mechanism_of_the_outside_table(string name)
    {
        var row = GeometryRows.All.Single(row => row["movement"] == name);
        var (ours, theirs) = (MechanismOf(name), GeometryRows.Mechanism(row));
        ours.WorkingJoint.ShouldBe(theirs.WorkingJoint);
        ours.Start.Degrees.Where(pair => pair.Value != 0).ShouldBe(theirs.Start.Degrees.Where(pair => pair.Value != 0), ignoreOrder: true);
        ours.End.Degrees.Where(pair => pair.Value != 0).ShouldBe(theirs.End.Degrees.Where(pair => pair.Value != 0), ignoreOrder: true);
        if (row["method"] != "even_assumed")
        {
            ours.Method.ShouldBe(theirs.Method);
        }

        Kind(ours.Resistance).ShouldBe(Kind(theirs.Resistance));
        (ours.Resistance as Resistance.Cable)?.Pulley.ShouldBe(((Resistance.Cable)theirs.Resistance).Pulley);
        (ours.Resistance as Resistance.Band)?.Anchor.ShouldBe(((Resistance.Band)theirs.Resistance).Anchor);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Rule_text_leads_to_a_curve_or_says_why_not(string name)
    {
        var row = GeometryRows.All.Single(row => row["movement"] == name);
        var profile = StaticSolver.Solve(MechanismOf(name));
        profile.Findings.ShouldNotContain(finding => finding.Severity == FindingSeverity.Refused);
        (profile.Curve is null).ShouldBe(row["method"] == "even_assumed");
        profile.Missing.Where(input => input.StopsTheCurve).Select(input => input.Name).ShouldBe(profile.Curve is null ? ["cam radius by angle"] : []);
    }

    /// <summary>What each movement of the catalogue comes to, read from rule text.</summary>
    [Fact]
    public void The_curves_of_the_catalogue_are_kept()
    {
        var text = new StringBuilder("movement,target,working joint,method,peak degrees,peak Nm,start to peak,share of first third,missing,findings\n");
        foreach (var model in MovementModels.Of(Judged.Longreach.Ruleset, Judged.Longreach.Catalogue))
        {
            var profile = StaticSolver.Solve(model.Mechanism!);
            var curve = profile.Curve;
            text.AppendJoin(',', model.Movement.Name, model.Target.Name, Motions.WordOf(model.Mechanism!.WorkingJoint), model.Mechanism.Method,
                Text(curve is null ? null : Peaks.Of(curve).AngleDegrees, 1), Text(curve is null ? null : Peaks.Of(curve).Moment, 1), Text(curve is null ? null : CurveSummary.StartToPeak(curve), 3),
                Text(curve is null ? null : CurveSummary.ShareOf(curve, Third.First), 3), string.Join(';', profile.Missing.Select(input => input.Name)),
                string.Join(';', profile.Findings.Select(finding => finding.Kind).Distinct().Order())).Append('\n');
        }

        Golden.Check(text.ToString(), "tests", "ScoreRules.Tests", "Golden", "catalogue-curves.csv");
    }

    private static Mechanism MechanismOf(string row)
    {
        var model = Models[GeometryNames.Find(row).Name];
        model.Lacks.ShouldBeEmpty();
        return model.Mechanism.ShouldNotBeNull();
    }

    // The table writes a machine's load that is not recorded, and a body with a plate, either way.
    private static string Kind(Resistance resistance) => resistance is Resistance.Weight or Resistance.BodyWeight ? "gravity" : resistance.GetType().Name;

    private static string Text(double? value, int decimals) => value is { } number ? (Math.Round(number, decimals) + 0.0).ToString(CultureInfo.InvariantCulture) : "";
}
