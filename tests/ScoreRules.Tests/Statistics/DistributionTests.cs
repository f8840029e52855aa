using ScoreRules.Statistics;
using ScoreRules.Statistics.Distributions;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Against closed forms; the published tail probabilities stand in the tests of pooling and networks.</summary>
public sealed class DistributionTests
{
    /// <summary>With two degrees of freedom the tail is exp(-x/2), with four exp(-x/2) (1 + x/2).</summary>
    [Theory]
    [InlineData(0.01)]
    [InlineData(1)]
    [InlineData(9.5)]
    [InlineData(150)]
    [InlineData(700)]
    public void The_chi_squared_tail_has_closed_forms(double x)
    {
        ChiSquaredDistribution.Above(x, 2).ShouldBeWithin(Math.Exp(-x / 2), 1e-13, "2");
        ChiSquaredDistribution.Above(x, 4).ShouldBeWithin(Math.Exp(-x / 2) * (1 + (x / 2)), 1e-13, "4");
    }

    /// <summary>With one degree of freedom the tail is 1 - 2 arctan(t) / pi, with two 1 - t / sqrt(2 + t^2).</summary>
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.9)]
    [InlineData(3)]
    [InlineData(40)]
    public void The_tail_of_Students_t_has_closed_forms(double t)
    {
        StudentDistribution.TwoSided(t, 1).ShouldBeWithin(2 * Math.Atan2(1, t) / Math.PI, 1e-13, "1");
        StudentDistribution.TwoSided(t, 2).ShouldBeWithin(2 / (Math.Sqrt(2 + (t * t)) * (Math.Sqrt(2 + (t * t)) + t)), 1e-13, "2");
    }

    [Theory]
    [InlineData(0.025)]
    [InlineData(0.4)]
    [InlineData(0.5)]
    [InlineData(0.975)]
    [InlineData(0.9999)]
    public void Quantiles_have_closed_forms(double share)
    {
        StudentDistribution.Quantile(share, 1).ShouldBe(Math.Tan(Math.PI * (share - 0.5)), 1e-12 * Math.Max(1, Math.Abs(Math.Tan(Math.PI * (share - 0.5)))));
        StudentDistribution.Quantile(share, 2).ShouldBe(((2 * share) - 1) / Math.Sqrt(2 * share * (1 - share)), 1e-12 * 100);
        ChiSquaredDistribution.Quantile(share, 2).ShouldBeWithin(-2 * Math.Log(1 - share), 1e-12, "chi");
        NormalDistribution.Below(NormalDistribution.Quantile(share)).ShouldBe(share, 1e-15);
    }

    /// <summary>Both below 0: 1/4 + arcsin(r) / (2 pi) (Sheppard 1899).</summary>
    [Theory]
    [InlineData(-0.99)]
    [InlineData(-0.3)]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(0.99)]
    public void A_quadrant_of_two_normals_has_a_closed_form(double correlation)
    {
        BivariateNormal.Below(0, 0, correlation).ShouldBe(0.25 + (Math.Asin(correlation) / (2 * Math.PI)), 1e-13);
        (BivariateNormal.Below(0.7, -0.4, correlation) + BivariateNormal.Below(0.7, 0.4, -correlation)).ShouldBe(NormalDistribution.Below(0.7), 1e-12);
    }

    /// <summary>Shares of two criteria drawn from a Dirichlet distribution: A is above B when the first weight is above 4/7.</summary>
    [Fact]
    public void The_beta_tail_equals_the_reference()
    {
        foreach (var item in Pins.Json("05-rank-probability.json").GetProperty("dirichlet_two_criteria").GetProperty("cases").EnumerateArray())
        {
            var (weights, kappa) = (item.GetProperty("w0").Values(), item.GetProperty("kappa").GetDouble());
            RegularizedBeta.Upper(4.0 / 7, kappa * weights[0], kappa * weights[1]).ShouldBe(item.GetProperty("P_A_above_B").GetDouble(), 1e-12);
        }
    }

    [Fact]
    public void Points_outside_are_refused()
    {
        Should.Throw<StatisticsInputException>(() => ChiSquaredDistribution.Above(-1, 3));
        Should.Throw<StatisticsInputException>(() => StudentDistribution.Quantile(0, 3));
        Should.Throw<StatisticsInputException>(() => RegularizedBeta.Lower(double.NaN, 1, 1));
        Should.Throw<StatisticsInputException>(() => BivariateNormal.Below(0, 0, 1));
    }
}
