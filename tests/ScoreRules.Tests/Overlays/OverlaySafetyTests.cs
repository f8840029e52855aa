using Shouldly;
using Xunit;
using static ScoreRules.Tests.Overlays.OverlayHouse;

namespace ScoreRules.Tests.Overlays;

/// <summary>What protects people can be added to and never weakened, whichever way it is tried.</summary>
public sealed class OverlaySafetyTests
{
    [Theory]
    [InlineData("drop caution Mind the shoulder.\n  because they know")]
    [InlineData("change caution Mind the shoulder.\n  severity low")]
    [InlineData("drop rule mind the shoulder\n  because they know")]
    [InlineData("change rule mind the shoulder\n  except for long curl")]
    [InlineData("change call far\n  when reach is at least 4")]
    [InlineData("drop call far\n  because it is not")]
    [InlineData("call far\n  when steadiness is 4")]
    [InlineData("drop rule older people first\n  because they can")]
    [InlineData("change rule older people first\n  never above Keep")]
    [InlineData("change rule older people first\n  except for loose curl")]
    [InlineData("change rule older people first\n  when audience has older adult\n  and steadiness is 0")]
    [InlineData("change rule older people first\n  only for arms")]
    [InlineData("give 1 point\n  always\n  overrides older people first")]
    [InlineData("caution Never mind.\n  always\n  severity low\n  overrides mind the shoulder")]
    public void Weakening_is_refused(string says)
    {
        var judgement = Judge(Quayside(says + "\n"));

        judgement.Findings.Select(finding => finding.Code).ShouldContain(code => code == "SR2109" || code == "SR2110" || code == "SR2105", string.Join(", ", judgement.Found()));
        judgement.HasErrors.ShouldBeTrue();
        judgement.Ruleset.Cautions.ShouldContain(caution => caution.Text == "Mind the shoulder.");
    }

    [Theory]
    [InlineData("change rule older people first\n  never above Swap")]
    [InlineData("change rule older people first\n  when audience has older adult\n  and steadiness is at most 2")]
    [InlineData("change rule older people first\n  when audience has older adult")]
    [InlineData("caution Mind the elbow too.\n  when far\n  severity high")]
    [InlineData("never above Swap\n  when audience has in pain")]
    public void Making_it_stricter_or_adding_to_it_is_fine(string says) => Judge(Quayside(says + "\n")).Found().ShouldBeEmpty();
}
