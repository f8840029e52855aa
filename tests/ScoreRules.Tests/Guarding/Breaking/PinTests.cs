using CsCheck;
using ScoreRules.Guarding.Breaking;
using ScoreRules.Houses;
using ScoreRules.Publishing.Guards;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Guarding.Breaking;

/// <summary>Suggested pins are rule text: pasted into the house they hold, and nothing that moved a tier goes unnoticed any more.</summary>
public sealed class PinTests
{
    [Fact]
    public void Pasted_into_a_house_without_expectations_the_pins_notice_everything()
    {
        var sources = HouseFolder.Read(Repository.PathOf("rulesets", "longreach"));
        var bare = sources with { Files = [.. sources.Files.Where(file => !file.Path.EndsWith("expectations.rules", StringComparison.Ordinal))] };
        var before = Run(Judge.Run(bare));
        before.Noticed.ShouldBe(0);
        before.Moved.ShouldBeGreaterThan(50);

        var text = string.Concat(before.Pins.Pins.Select(pin => BreakageWords.Pin(pin) + "\n"));
        var pinned = Judge.Run(bare with { Files = bare.Files.Add(new HouseFile("longreach/pins.rules", text, "", IsSpreadsheet: false) { Layer = bare.Files.Max(file => file.Layer) }) });
        pinned.Findings.ShouldBeEmpty(text);
        pinned.Expectations.Length.ShouldBe(before.Pins.Pins.Length);
        pinned.Expectations.ShouldAllBe(result => result.Holds);
        Run(pinned).Score.ShouldBe(1);
    }

    [Fact]
    public void In_any_small_house_no_fewer_tier_pins_would_do() => SmallHouse.Any.Sample(
        house =>
        {
            var judgement = Judged.Text(house);
            judgement.HasErrors.ShouldBeFalse(string.Join('\n', judgement.Findings.Select(finding => finding.Headline)));
            var report = Run(judgement);
            report.Pins.IsSmallest.ShouldBeTrue();
            report.Pins.Pins.Length.ShouldBe(Fewest(report), house);
            var text = string.Concat(report.Pins.Pins.Select(pin => BreakageWords.Pin(pin) + "\n"));
            (Run(Judged.Text(house + "\n" + text)).Score ?? 1).ShouldBe(1, house + text);
        },
        iter: 20);

    // Every set of movements, by size: the first that meets each unnoticed breakage somewhere.
    private static int Fewest(BreakageReport report)
    {
        var moved = report.Unnoticed.Select(outcome => outcome.Moved.Select(one => one.Row.Index).ToHashSet()).ToList();
        var rows = moved.SelectMany(one => one).Distinct().ToList();
        return Enumerable.Range(0, 1 << rows.Count).Select(choice => rows.Where((_, position) => (choice >> position & 1) == 1).ToHashSet())
            .Where(choice => moved.TrueForAll(one => one.Overlaps(choice))).Min(choice => choice.Count);
    }

    private static BreakageReport Run(Judgement judgement) => new BreakageRun(judgement).Run(cancellation: TestContext.Current.CancellationToken);
}
