using System.Globalization;
using CsCheck;
using ScoreRules.Language.Binding;
using ScoreRules.Scoring;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Scoring;

public sealed class WorthCurveTests
{
    /// <summary>Straight lines between points against published examples; the source is named in each row. Outside the points we hold the end value ("clip").</summary>
    [Fact]
    public void Straight_lines_equal_published_value_functions()
    {
        var rows = ReferenceTable.Rows("value-functions.csv").Where(row => row["outside"] == "clip").ToList();
        rows.Count.ShouldBeGreaterThan(15);
        foreach (var row in rows)
        {
            var curve = Curve(Numbers(row["breakpoints"]), Numbers(row["values"]), isStep: false);
            WorthCurve.At(curve, double.Parse(row["x"], CultureInfo.InvariantCulture)).ShouldBe(double.Parse(row["expected"], CultureInfo.InvariantCulture), 1e-12, row["source"]);
        }
    }

    [Theory]
    [InlineData(-1, 0.2)]
    [InlineData(0, 0.2)]
    [InlineData(1.99, 0.2)]
    [InlineData(2, 0.7)]
    [InlineData(4, 1)]
    [InlineData(9, 1)]
    public void Steps_keep_the_worth_of_the_last_point_reached(double at, double worth) =>
        WorthCurve.At(Curve([0, 2, 4], [0.2, 0.7, 1], isStep: true), at).ShouldBe(worth);

    [Fact]
    public void Worth_never_leaves_the_range_of_its_points() => Gen.Select(Gen.Double[0, 1].Array[2, 6], Gen.Double[-10, 20]).Sample((values, at) =>
        WorthCurve.At(Curve([.. values.Select((_, index) => (double)index)], values, isStep: false), at).ShouldBeInRange(values.Min() - 1e-12, values.Max() + 1e-12));

    private static WorthFunction Curve(double[] points, double[] values, bool isStep) => new(isStep, [.. points.Zip(values)], []);

    private static double[] Numbers(string list) => [.. list.Split(';').Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
}
