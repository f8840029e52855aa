using System.Text.Json;
using ScoreRules.Tests.Support;
using ScoreRules.Weighting;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Weighting;

public sealed class WeightVectorTests
{
    /// <summary>Swing and direct points; the source stands in the file.</summary>
    [Fact]
    public void Points_become_the_published_shares()
    {
        using var json = JsonDocument.Parse(Repository.Read("tests", "ScoreRules.Tests", "Reference", "weights-swing.json"));
        var examples = json.RootElement.GetProperty("examples").EnumerateArray().ToList();
        examples.Count.ShouldBe(3);
        foreach (var example in examples)
        {
            var points = example.GetProperty("points").EnumerateObject().ToList();
            var shares = WeightVector.Normalised([.. points.Select(point => point.Value.GetDouble())]);
            shares.ShouldBe(points.Select(point => Fraction.Of(example.GetProperty("expected").GetProperty(point.Name).GetString()!)));
        }
    }
}
