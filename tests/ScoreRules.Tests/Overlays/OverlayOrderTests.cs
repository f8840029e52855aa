using CsCheck;
using Shouldly;
using Xunit;
using static ScoreRules.Tests.Overlays.OverlayHouse;

namespace ScoreRules.Tests.Overlays;

/// <summary>The order of the statements of a house has no meaning, not even when they change a house below.</summary>
public sealed class OverlayOrderTests
{
    private static readonly string[] Statements =
    [
        "change criterion long\n  counts half as much",
        "change criterion long\n  reads steadiness",
        "change tiers\n  Level is now called Good enough",
        "change rule older people first\n  never above Swap",
        "drop rule both at once\n  because nobody is",
        "give 2 points\n  named both at once\n  when far",
        "change movement loose curl\n  steadiness is 4",
        "change movement loose curl\n  equipment has cable",
        "expect bar curl is in Good enough",
        "caution Mind the elbow too.\n  when far\n  severity high",
    ];

    [Fact]
    public void Any_order_of_statements_gives_the_same_ranking_and_the_same_changes()
    {
        var kept = Told(Judge(Quayside(string.Join("\n\n", Statements))));
        kept.ShouldContain(line => line.Contains("Good enough", StringComparison.Ordinal));

        Gen.Shuffle(Statements).Sample(order => Told(Judge(Quayside(string.Join("\n\n", order)))).ShouldBe(kept), iter: 50);
    }

    private static string[] Told(Judgement judgement) =>
    [
        .. judgement.Found(),
        .. judgement.Placements(),
        .. judgement.Ruleset.Amendments.SelectMany(amendment => amendment.Lines.Select(line => $"{amendment.Title}: {line.NewText} / {line.OldText}")).Order(StringComparer.Ordinal),
    ];
}
