using ScoreRules.Publishing;
using ScoreRules.Tests.Overlays;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Publishing;

/// <summary>A fault in what a caution relies on may take the caution away, and is named with those that do.</summary>
public sealed class SafetyRelianceTests
{
    private const string Warning = "may take a caution or a limit away";

    [Fact]
    public void A_broken_call_that_a_caution_relies_on_is_named() =>
        Printed("when reach is at least 3", "when reach is at leest 3").ShouldContain(Warning);

    [Fact]
    public void A_call_relied_on_over_another_one_is_named() =>
        Printed("call far\n  when reach is at least 3", "call stretched\n  when reach is at leest 3\n\ncall far\n  when stretched").ShouldContain(Warning);

    [Fact]
    public void A_broken_call_that_only_gives_points_is_not() =>
        Printed("give 4 points\n  named both at once\n  when far", "call high up\n  when reach is at leest 3\n\ngive 4 points\n  named both at once\n  when high up").ShouldNotContain(Warning);

    private static string Printed(string sound, string broken)
    {
        var text = OverlayHouse.Base.ReplaceLineEndings("\n");
        text.ShouldContain(sound);
        var sources = OverlayHouse.Sources();
        sources = sources with { Files = [sources.Files[0] with { Text = text.Replace(sound, broken, StringComparison.Ordinal) }] };
        var judgement = Judge.Run(sources, new JudgeOptions { DespiteErrors = true });
        judgement.Findings.ShouldNotBeEmpty();
        return string.Join(' ', new RankingText(judgement).Print(judgement.Rankings).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
