using System.Globalization;
using System.Text;
using ScoreRules.Tests.Support;
using ScoreRules.Tiering;
using Xunit;

namespace ScoreRules.Tests.Houses;

/// <summary>The rankings of the shipped houses, kept: a change prints which movements moved.</summary>
public sealed class GoldenRankingTests
{
    [Theory]
    [InlineData("longreach")]
    [InlineData("longreach-second")]
    [InlineData("harbour-lane")]
    [InlineData("linden-court")]
    public void A_shipped_house_ranks_as_it_did(string house) => Golden.Check(Print(Judged.House(house)), "tests", "ScoreRules.Tests", "Golden", house + ".txt");

    private static string Print(Judgement judgement)
    {
        var text = new StringBuilder();
        foreach (var ranking in judgement.Rankings)
        {
            text.Append(CultureInfo.InvariantCulture, $"{ranking.Target.Name}\n");
            foreach (var placement in ranking.Placements)
            {
                var limit = placement.Binding is null ? "" : $" ({placement.Binding.Info.Kind}: {placement.Binding.Info.Name})";
                text.Append(CultureInfo.InvariantCulture, $"  {placement.Rank,2} {Rounding.Printed(placement.Score, 2),6:0.00} {placement.Tier.Name}: {placement.Row.Movement.Name}{limit}\n");
            }

            foreach (var row in ranking.LeftOut)
            {
                text.Append(CultureInfo.InvariantCulture, $"   - {Rounding.Printed(row.Score, 2),6:0.00} left out: {row.Row.Movement.Name} ({row.Rules[0].Info.Name})\n");
            }
        }

        return text.ToString();
    }
}
