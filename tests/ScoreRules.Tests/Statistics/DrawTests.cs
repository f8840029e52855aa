using System.Globalization;
using System.IO.Compression;
using System.Text.Json;
using ScoreRules.Statistics;
using ScoreRules.Statistics.Beliefs;
using ScoreRules.Statistics.Draws;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Sampling agrees with exact figures within 4 sqrt(p (1 - p) / N); the seeds are fixed.</summary>
public sealed class DrawTests
{
    private const int Draws = 100_000;

    private static readonly double[] Quantiles = [0.025, 0.5, 0.975];

    private static readonly JsonElement Exact = Pins.Json("05-smaa-exact.json");
    private static readonly JsonElement Ranks = Pins.Json("05-rank-probability.json");

    public static TheoryData<string> Examples() => new(Exact.GetProperty("examples").EnumerateArray().Select(item => item.GetProperty("name").GetString()!));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Ranks_central_weights_and_wins_equal_the_exact_areas(string name)
    {
        var item = Exact.GetProperty("examples").EnumerateArray().Single(example => example.GetProperty("name").GetString() == name);
        string[] labels = [.. item.GetProperty("values").EnumerateObject().Select(row => row.Name)];
        double[][] values = [.. item.GetProperty("values").EnumerateObject().Select(row => row.Value.Values())];
        var weights = name.Contains(">=", StringComparison.Ordinal) ? OrderedWeights.Of([[0], [1], [2]]) : OrderedWeights.Unknown(3);
        var (ranks, wins) = (new RankTally(labels.Length, 3), new WinTally(labels.Length));
        DrawPlan.Of(weights, values).Run(Draws, 5, [ranks, wins]);
        for (var i = 0; i < labels.Length; i++)
        {
            var expected = item.GetProperty("rank_acceptability").GetProperty(labels[i]).Values();
            for (var rank = 0; rank < labels.Length; rank++)
            {
                Near(ranks.Acceptability(i, rank), expected[rank], Draws, $"{labels[i]} rank {rank + 1}");
            }

            foreach (var win in item.GetProperty("pairwise_win").GetProperty(labels[i]).EnumerateObject())
            {
                Near(wins.Share(i, Array.IndexOf(labels, win.Name)), win.Value.Value(), Draws, $"{labels[i]} over {win.Name}");
            }

            Central(ranks.CentralWeights(i), item.GetProperty("central_weight").GetProperty(labels[i]), ranks.Count(i, 0));
        }
    }

    /// <summary>Stored draws of two treatments on three criteria, value and weight both random; the shares .3504 and .6496 are published.</summary>
    [Fact]
    public void Stored_draws_are_counted_exactly()
    {
        using var file = new StreamReader(new GZipStream(File.OpenRead(Repository.PathOf("tests", "ScoreRules.Tests", "Reference", "statistics", "05-smaa-thrombo-samples.csv.gz")), CompressionMode.Decompress));
        file.ReadLine();
        var (draw, ranks) = (new Draw(2, 3), new RankTally(2, 3));
        while (file.ReadLine() is { } line)
        {
            double[] cells = [.. line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
            for (var k = 0; k < 3; k++)
            {
                draw.Weights[k] = cells[6 + k];
            }

            for (var i = 0; i < 2; i++)
            {
                draw.Scores[i] = Enumerable.Range(0, 3).Sum(k => cells[(3 * i) + k] * draw.Weights[k]);
            }

            draw.Renew();
            ranks.Add(draw);
        }

        (ranks.Count(0, 0), ranks.Count(0, 1), ranks.Count(1, 0), ranks.Count(1, 1)).ShouldBe((3504, 6496, 6496, 3504));
    }

    /// <summary>Mean and variance of uniform weights: 1/n and (n-1)/(n^2 (n+1)); of ordered ones the rank-order centroid (Barron and Barrett 1996), for three 11/18, 5/18, 1/9.</summary>
    [Fact]
    public void Weights_have_the_moments_of_their_region()
    {
        var (unknown, ordered, part) = (Sample(OrderedWeights.Unknown(3)), Sample(OrderedWeights.Of([[2], [0], [1]])), Sample(OrderedWeights.Of([[1], [0, 2]])));
        for (var k = 0; k < 3; k++)
        {
            unknown[k].Average().ShouldBe(1.0 / 3, 4 * Math.Sqrt(1.0 / 18 / Draws));
            unknown[k].Average(w => (w - (1.0 / 3)) * (w - (1.0 / 3))).ShouldBe(1.0 / 18, 0.001);
        }

        double[] means = [5.0 / 18, 1.0 / 9, 11.0 / 18];
        means.Select((mean, k) => ordered[k].Average() - mean).ShouldAllBe(error => Math.Abs(error) < 0.002);
        double[] partly = [7.0 / 36, 11.0 / 18, 7.0 / 36];
        partly.Select((mean, k) => part[k].Average() - mean).ShouldAllBe(error => Math.Abs(error) < 0.002);
    }

    [Fact]
    public void Weights_about_stated_ones_equal_the_beta_distribution()
    {
        foreach (var item in Ranks.GetProperty("dirichlet_two_criteria").GetProperty("cases").EnumerateArray())
        {
            var weights = DirichletWeights.About(item.GetProperty("w0").Values(), item.GetProperty("kappa").GetDouble());
            var wins = new WinTally(2);
            DrawPlan.Of(weights, [item.GetProperty("A").Values(), item.GetProperty("B").Values()]).Run(Draws, 6, [wins]);
            Near(wins.Share(0, 1), item.GetProperty("P_A_above_B").GetDouble(), Draws, "A above B");
            var first = Sample(weights)[0];
            var mean = item.GetProperty("w0")[0].GetDouble();
            Math.Sqrt(first.Average(w => (w - mean) * (w - mean))).ShouldBe(item.GetProperty("sd_w1").GetDouble(), 0.001);
            DirichletWeights.KappaFor(mean, item.GetProperty("sd_w1").GetDouble()).ShouldBe(item.GetProperty("kappa").GetDouble(), 1e-9);
        }
    }

    [Fact]
    public void Gaussian_ranks_equal_the_closed_form_and_draws_agree()
    {
        var item = Ranks.GetProperty("gaussian_three");
        var (means, covariance, expected) = (item.GetProperty("mean").Values(), item.GetProperty("cov").Matrix(), item.GetProperty("rank_probabilities").Matrix());
        var exact = ThreeWayRanks.Of(means, (i, j) => covariance[i][j]);
        var ranks = new RankTally(3, 0);
        DrawPlan.Of(OrderedWeights.Unknown(1), [[0], [0], [0]], means, [BeliefNoiseStep.Of(3, (i, j) => covariance[i][j])]).Run(Draws, 7, [ranks]);
        for (var i = 0; i < 3; i++)
        {
            exact[i].ShouldBe(expected[i], 1e-8);
            RankSummary.SurfaceUnderCumulative(exact[i]).ShouldBe(item.GetProperty("sucra_from_rank_probabilities")[i].GetDouble(), 1e-8);
            for (var rank = 0; rank < 3; rank++)
            {
                Near(ranks.Acceptability(i, rank), expected[i][rank], Draws, $"{i} rank {rank}");
            }
        }
    }

    [Fact]
    public void Summaries_of_ranks_equal_the_reference()
    {
        foreach (var table in Ranks.GetProperty("sucra").EnumerateArray())
        {
            double[][] rows = [.. table.GetProperty("rank_probabilities").Matrix()];
            rows.Select(RankSummary.SurfaceUnderCumulative).ShouldBe(table.GetProperty("computed").Values(), 1e-8);
            if (table.TryGetProperty("rank_quantiles_025_50_975", out var quantiles))
            {
                rows.Select(row => Quantiles.Select(share => (double)RankSummary.Quantile(row, share)).ToArray()).ShouldBe(quantiles.Matrix());
            }
        }
    }

    [Fact]
    public void Tier_probabilities_equal_the_reference_and_draws_agree()
    {
        foreach (var row in Pins.Rows("06-tier-probability.csv"))
        {
            double[] expected = [row.Number("p_80_up"), row.Number("p_65_80"), row.Number("p_50_65"), row.Number("p_below_50")];
            var (mean, deviation) = (row.Number("mean"), row.Number("sd"));
            TierCuts.Probabilities(mean, deviation, [80, 65, 50]).ShouldBe(expected, 1e-10);
            var tiers = new TierTally(1, [80, 65, 50]);
            DrawPlan.Of(OrderedWeights.Unknown(1), [[0]], [mean], [BeliefNoiseStep.Of(1, (_, _) => deviation * deviation)]).Run(Draws, 8, [tiers]);
            for (var tier = 0; tier < 4; tier++)
            {
                Near(tiers.Share(0, tier), expected[tier], Draws, $"tier {tier}");
            }
        }
    }

    /// <summary>By hand: gaps to the benchmark 0, +5 and -5.5 against cuts 5 and -5; a border belongs to the better tier.</summary>
    [Fact]
    public void Tiers_can_be_cut_by_the_gap_to_a_benchmark()
    {
        var tiers = new TierTally(3, [5, -5], benchmark: 0);
        DrawPlan.Of(FixedWeights.Of([1]), [[60], [65], [54.5]]).Run(2, 1, [tiers]);
        (tiers.Share(0, 1), tiers.Share(1, 0), tiers.Share(2, 2)).ShouldBe((1, 1, 1));
    }

    [Fact]
    public void Equal_scores_share_their_ranks()
    {
        var (ranks, wins) = (new RankTally(3, 1), new WinTally(3));
        DrawPlan.Of(FixedWeights.Of([2]), [[7], [9], [7]]).Run(4, 1, [ranks, wins]);
        (ranks.Count(1, 0), ranks.Count(0, 1), ranks.Count(0, 2), ranks.Count(2, 1), wins.Share(0, 2)).ShouldBe((4, 2, 2, 2, 0.5));
        ranks.CentralWeights(0).ShouldBeNull();
    }

    /// <summary>By hand: 5 above 4 with variance 1 each and a difference of 0 measured with variance 2: the lead halves in every draw; then an order held the other way round brings them level.</summary>
    [Fact]
    public void Evidence_and_held_orders_act_in_every_draw()
    {
        var prior = ScorePrior.Of([0, 0], [1, 1]);
        var evidence = new EvidenceStep(BeliefUpdate.Of(prior, [Observation.Measured(0, 1, 0, 2)]));
        var held = new HeldOrderStep(HeldOrders.Of(2, (i, j) => i == j ? 1 : 0, [new HeldOrder(1, 0, 0)]));
        var seen = new LastScores();
        DrawPlan.Of(FixedWeights.Of([1]), [[5], [4]], steps: [evidence]).Run(1, 1, [seen]);
        seen.Scores.ShouldBe([4.75, 4.25], 1e-12);
        DrawPlan.Of(FixedWeights.Of([1]), [[5], [4]], steps: [evidence, held]).Run(1, 1, [seen]);
        seen.Scores.ShouldBe([4.5, 4.5], 1e-12);
    }

    /// <summary>By hand: a rating that is off by one step to each side with probability 0.2, worth -1 and +2 with weight 1: the score is 9, 10 or 12.</summary>
    [Fact]
    public void Ratings_can_be_one_step_off()
    {
        var tiers = new TierTally(1, [11, 9.5]);
        DrawPlan.Of(FixedWeights.Of([1]), [[10]], steps: [RatingDoubtStep.Of([new RatingDoubt(0, 0, -1, 2, 0.2)])]).Run(Draws, 9, [tiers]);
        Near(tiers.Share(0, 0), 0.2, Draws, "up");
        Near(tiers.Share(0, 1), 0.6, Draws, "same");
        Near(tiers.Share(0, 2), 0.2, Draws, "down");
    }

    [Fact]
    public void The_same_seed_gives_the_same_draws_and_another_one_others()
    {
        double Share(ulong seed)
        {
            var wins = new WinTally(2);
            DrawPlan.Of(OrderedWeights.Unknown(2), [[3, 1], [1, 2]]).Run(1_000, seed, [wins]);
            return wins.Share(0, 1);
        }

        Share(3).ShouldBe(Share(3));
        Share(3).ShouldNotBe(Share(4));
    }

    [Fact]
    public void Memory_does_not_grow_with_the_number_of_draws()
    {
        var plan = DrawPlan.Of(DirichletWeights.About([3, 2, 1], 50), [[1, 2, 3], [3, 2, 1], [2, 2, 2]]);
        ITally[] tallies = [new RankTally(3, 3), new WinTally(3), new TierTally(3, [2])];
        plan.Run(10, 1, tallies);
        Allocated(10_000).ShouldBeLessThan(Allocated(100) + 10_000);

        long Allocated(int draws)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            plan.Run(draws, 1, tallies);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    [Fact]
    public void Bad_plans_are_refused_in_words()
    {
        Says("A weight must not be below 0, but is -1.", () => DirichletWeights.About([1, -1], 5));
        Says("The sum of the weights must be above 0, but is 0.", () => FixedWeights.Of([0, 0]));
        Says("The firmness of weights must be above 0, but is 0.", () => DirichletWeights.About([1, 1], 0));
        Says("An order of weights must name each of them once.", () => OrderedWeights.Of([[0], [0]]));
        Says("Weights and the values of a thing must be equally many, but are 2 and 1.", () => DrawPlan.Of(OrderedWeights.Unknown(2), [[1]]));
        Says("A value must be a number, but is NaN.", () => DrawPlan.Of(OrderedWeights.Unknown(1), [[double.NaN]]));
        Says("The borders of tiers must fall from the best tier down.", () => new TierTally(1, [50, 65]));
        Says("The number of draws must be at least 1, but is 0.", () => new RankTally(1, 1).Acceptability(0, 0));
        Says("The probabilities of all ranks must sum to 1.", () => RankSummary.Quantile([0.5, 0.2], 0.5));
    }

    private static void Says(string message, Func<object> make) => Should.Throw<StatisticsInputException>(() => make()).Message.ShouldBe(message);

    private static void Near(double actual, double expected, double draws, string what) => actual.ShouldBe(expected, (4 * Math.Sqrt(expected * (1 - expected) / draws)) + 1e-9, what);

    private static void Central(IReadOnlyList<double>? actual, JsonElement expected, double first)
    {
        if (expected.ValueKind == JsonValueKind.Null)
        {
            actual.ShouldBeNull();
            return;
        }

        // A weight lies between 0 and 1, so its mean over n draws is within 4 * 0.5 / sqrt(n).
        actual.ShouldNotBeNull().ShouldBe(expected.Values(), 2 / Math.Sqrt(first));
    }

    private static double[][] Sample(IWeightSource source)
    {
        var generator = new Generator(4);
        var weights = new double[source.Count];
        var columns = weights.Select(_ => new double[Draws]).ToArray();
        for (var i = 0; i < Draws; i++)
        {
            source.Next(generator, weights);
            for (var k = 0; k < weights.Length; k++)
            {
                columns[k][i] = weights[k];
            }
        }

        return columns;
    }

    private sealed class LastScores : ITally
    {
        public double[] Scores { get; private set; } = [];

        public void Add(Draw draw) => Scores = [.. draw.Scores];
    }
}
