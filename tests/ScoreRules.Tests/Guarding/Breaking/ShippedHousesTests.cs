using ScoreRules.Guarding.Breaking;
using ScoreRules.Publishing.Guards;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Guarding.Breaking;

/// <summary>The shipped houses would notice at least nine of ten breakages that move a tier.</summary>
public sealed class ShippedHousesTests
{
    [Theory]
    [InlineData("longreach")]
    [InlineData("longreach-second")]
    [InlineData("harbour-lane")]
    [InlineData("linden-court")]
    public void A_shipped_house_notices_nine_of_ten(string folder)
    {
        var report = new BreakageRun(Judged.House(folder)).Run(cancellation: TestContext.Current.CancellationToken);
        report.Moved.ShouldBeGreaterThan(80);
        report.Score!.Value.ShouldBeGreaterThanOrEqualTo(0.9, string.Join('\n', report.Unnoticed.Select(outcome => $"{BreakageWords.Title(outcome.Breakage)}: {BreakageWords.Move(outcome.Moved[0])}")));
    }
}
