using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>Lengths against the tables they were fitted to, within the error each fit states of itself (muscle-polynomials.csv).</summary>
public sealed class LengthTableTests
{
    // The tables give tenths of a tenth of a millimetre.
    private const double Rounding = 0.011;

    public static TheoryData<string> Parts() => [.. ModelPart.Rows("muscle-polynomials").Select(row => row["muscle"]).Except(["subscapularis"])];

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_part_keeps_to_the_error_its_fit_states(string name)
    {
        var fit = ModelPart.Rows("muscle-polynomials").Single(row => row["muscle"] == name);
        var errors = Errors(name);
        var isGrid = fit["verdict"].StartsWith("use the grid", StringComparison.Ordinal);
        errors.Max().ShouldBeLessThanOrEqualTo(isGrid ? Rounding : ModelPart.Number(fit["max_error_mm"]) + Rounding);
        Math.Sqrt(errors.Average(error => error * error)).ShouldBeLessThanOrEqualTo(isGrid ? Rounding : 1.25 * (ModelPart.Number(fit["rms_error_mm"]) + Rounding));
    }

    public static TheoryData<string> PartsOfTheShoulder() =>
        [.. ModelPart.Rows("muscle-index").Where(row => row["q2"] == "shoulder_elevation").Select(row => row["muscle"]).Except(["subscapularis"])];

    [Theory]
    [MemberData(nameof(PartsOfTheShoulder))]
    public void A_hanging_arm_has_one_length_within_the_spread_of_the_table(string name)
    {
        var hanging = ModelPart.Rows("muscle-grid-every-third").Where(row => row["muscle"] == name && row["q2"] == "shoulder_elevation" && row["q2_deg"] == "0").ToList();
        var (low, high) = (hanging.Min(row => ModelPart.Number(row["mtu_length_m"])), hanging.Max(row => ModelPart.Number(row["mtu_length_m"])));
        var lengths = hanging.Select(row => ModelPart.Named(name).LengthAt(ModelPart.At(row)).Metres).ToList();
        (lengths.Max() - lengths.Min()).ShouldBeLessThan(1e-12);
        lengths[0].ShouldBeInRange(low - 0.003, high + 0.003);
    }

    // Lengths with a hanging arm are the mean over all planes by design; they have a test of their own.
    private static List<double> Errors(string name) =>
    [
        .. ModelPart.Rows("muscle-grid-every-third")
            .Where(row => row["muscle"] == name && !(row["q2"] == "shoulder_elevation" && row["q2_deg"] == "0"))
            .Select(row => 1000 * Math.Abs(ModelPart.Named(name).LengthAt(ModelPart.At(row)).Metres - ModelPart.Number(row["mtu_length_m"]))),
    ];
}
