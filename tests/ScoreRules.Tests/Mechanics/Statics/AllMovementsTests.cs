using System.Globalization;
using System.Text;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Checks;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>All 130 movements of the invented catalogue through the methods.</summary>
public sealed class AllMovementsTests
{
    public static TheoryData<string> Names() => [.. GeometryRows.All.Select(row => row["movement"])];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_movement_has_a_curve_unless_its_cam_is_not_recorded(string name)
    {
        var row = GeometryRows.All.Single(row => row["movement"] == name);
        var profile = StaticSolver.Solve(GeometryRows.Mechanism(row));
        if (row["method"] == "even_assumed")
        {
            profile.Curve.ShouldBeNull();
            profile.Missing.Where(input => input.StopsTheCurve).Select(input => input.Name).ShouldBe(["cam radius by angle"]);
            profile.Findings.ShouldNotContain(finding => finding.Severity == FindingSeverity.Refused);
            return;
        }

        var curve = profile.Curve.ShouldNotBeNull(string.Join('\n', profile.Findings));
        curve.Points.Length.ShouldBe(61);
        curve.Points.ShouldAllBe(point => double.IsFinite(point.Moment));
        Peaks.Of(curve).Moment.ShouldBeGreaterThan(1);
    }

    [Fact]
    public void The_table_has_115_movements_with_a_curve_and_15_without()
    {
        GeometryRows.All.Count(row => row["method"] != "even_assumed").ShouldBe(115);
        GeometryRows.All.Count(row => row["method"] == "even_assumed").ShouldBe(15);
    }

    /// <summary>Kept so that a change of the model shows in each movement: shape, then what the checks object to, then the second opinion beside ours.</summary>
    [Fact]
    public void The_shapes_of_all_curves_are_kept()
    {
        var opinions = ReferenceTable.Rows("mechanics/statics-second-opinion.csv").ToDictionary(row => row["movement"], StringComparer.Ordinal);
        var text = new StringBuilder("movement,method,peakDegrees,peakNewtonMetres,startToPeak,shareFirstThird,meanToPeakFirstThird,flatness,secondOpinionShare,secondOpinionMean,findings\n");
        foreach (var row in GeometryRows.All.Where(row => row["method"] != "even_assumed"))
        {
            var profile = StaticSolver.Solve(GeometryRows.Mechanism(row));
            var (curve, other) = (profile.Curve!, opinions.GetValueOrDefault(row["movement"]));
            text.AppendJoin(',', row["movement"], row["method"], Text(Peaks.Of(curve).AngleDegrees, 1), Text(Peaks.Of(curve).Moment, 1), Text(CurveSummary.StartToPeak(curve)),
                Text(CurveSummary.ShareOf(curve, Third.First)), Text(CurveSummary.MeanToPeak(curve, Third.First)), Text(CurveSummary.Flatness(curve)),
                other?["share_long_third"] ?? "", other?["mean_long_third_ratio"] ?? "", string.Join(';', profile.Findings.Select(finding => finding.Kind).Distinct().Order())).Append('\n');
        }

        Golden.Check(text.ToString(), "tests", "ScoreRules.Tests", "Golden", "statics-curves.csv");
    }

    private static string Text(double? value, int decimals = 4) => value is { } number ? (Math.Round(number, decimals) + 0.0).ToString(CultureInfo.InvariantCulture) : "";
}
