using ScoreRules.Statistics;
using ScoreRules.Statistics.Draws;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

public sealed class GeneratorTests
{
    /// <summary>The first numbers from the state 1, 2, 3, 4, as the authors' own code gives them (from memory; the first two are easily worked by hand: rotl(2 * 5, 7) * 9 = 11520, then s1 is 0).</summary>
    [Fact]
    public void The_sequence_is_that_of_its_authors()
    {
        var generator = new Generator(1, 2, 3, 4);
        ulong[] expected = [11520, 0, 1509978240, 1215971899390074240, 1216172134540287360, 607988272756665600, 16172922978634559625, 8476171486693032832, 10595114339597558777, 2904607092377533576];
        expected.Select(_ => generator.NextBits()).ShouldBe(expected);
    }

    /// <summary>From seed 1234567, as published with the algorithm in several places (from memory).</summary>
    [Fact]
    public void The_filling_of_the_state_is_that_of_its_authors()
    {
        var state = 1234567UL;
        ulong[] expected = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        expected.Select(_ => Generator.SplitMix(ref state)).ShouldBe(expected);
    }

    /// <summary>Moments of 200,000 numbers, within four standard errors.</summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(7.5)]
    public void Gamma_numbers_have_mean_and_variance_of_their_shape(double shape)
    {
        var generator = new Generator(11);
        var numbers = Enumerable.Range(0, 200_000).Select(_ => generator.NextGamma(shape)).ToArray();
        numbers.Average().ShouldBe(shape, 4 * Math.Sqrt(shape / numbers.Length));
        var fourth = (3 * shape * shape) + (6 * shape);
        numbers.Average(number => (number - shape) * (number - shape)).ShouldBe(shape, 4 * Math.Sqrt((fourth - (shape * shape)) / numbers.Length));
    }

    [Fact]
    public void Normal_numbers_have_the_moments_of_a_standard_one()
    {
        var generator = new Generator(12);
        var numbers = Enumerable.Range(0, 200_000).Select(_ => generator.NextNormal()).ToArray();
        var root = Math.Sqrt(numbers.Length);
        numbers.Average().ShouldBe(0, 4 / root);
        numbers.Average(z => z * z).ShouldBe(1, 4 * Math.Sqrt(2) / root);
        numbers.Average(z => z * z * z).ShouldBe(0, 4 * Math.Sqrt(15) / root);
        numbers.Average(z => z * z * z * z).ShouldBe(3, 4 * Math.Sqrt(96) / root);
    }

    [Fact]
    public void A_gamma_number_needs_a_shape_above_0() => Should.Throw<StatisticsInputException>(() => new Generator(1).NextGamma(0)).Message.ShouldBe("The shape of a gamma distribution must be above 0, but is 0.");
}
