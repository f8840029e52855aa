using System.Globalization;
using ScoreRules.Report.Rendering;
using Shouldly;
using Xunit;

namespace ScoreRules.ReportTests;

/// <summary>
/// Contrast ratios by the formula of WCAG 2.2 (relative luminance; 4.5 for text, 3 for marks that carry meaning). The formula
/// itself is held to figures from outside: black on white is 21, #777777 on white 4.48 (both stated in W3C's techniques; from memory).
/// </summary>
public sealed class ContrastTests
{
    public static TheoryData<string, string, double> Pairs() => new()
    {
        { "ink", "paper", 4.5 },
        { "ink", "raised", 4.5 },
        { "ink2", "paper", 4.5 },
        { "ink2", "raised", 4.5 },
        { "link", "paper", 4.5 },
        { "link", "raised", 4.5 },
        { "link", "third", 4.5 },
        { "onsolid", "solid", 4.5 },
        { "line", "paper", 3 },
        { "line", "raised", 3 },
        { "t1", "paper", 3 },
        { "t2", "paper", 3 },
        { "t2", "raised", 3 },
        { "t3", "paper", 3 },
    };

    [Fact]
    public void The_formula_gives_the_known_figures()
    {
        Ratio("#000000", "#ffffff").ShouldBe(21, 0.001);
        Ratio("#777777", "#ffffff").ShouldBe(4.48, 0.005);
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Every_pair_is_legible_on_light_on_dark_and_on_paper(string fore, string back, double least)
    {
        var (above, below) = (Token(fore), Token(back));
        Ratio(above.Light, below.Light).ShouldBeGreaterThanOrEqualTo(least, "light");
        Ratio(above.Dark, below.Dark).ShouldBeGreaterThanOrEqualTo(least, "dark");
        Ratio(above.Paper, below.Paper).ShouldBeGreaterThanOrEqualTo(least, "paper");
    }

    [Fact]
    public void Tiers_run_from_dark_to_light_in_one_direction()
    {
        string[] tiers = ["t1", "t2", "t3", "t4", "t5"];
        tiers.Select(tier => Luminance(Token(tier).Light)).ShouldBeInOrder();
        tiers.Select(tier => Luminance(Token(tier).Dark)).ShouldBeInOrder(SortDirection.Descending);
    }

    private static (string Token, string Light, string Dark, string Paper) Token(string name) => Palette.Tokens.Single(token => token.Token == name);

    private static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour) => 0.2126 * Channel(colour, 1) + 0.7152 * Channel(colour, 3) + 0.0722 * Channel(colour, 5);

    private static double Channel(string colour, int at)
    {
        var value = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }
}
