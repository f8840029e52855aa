using System.Text.Json;
using CsCheck;
using ScoreRules.Statistics;
using ScoreRules.Statistics.Beliefs;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Beliefs after studies and orders that are kept, pinned to 1e-9.</summary>
public sealed class BeliefTests
{
    private const double Tolerance = 1e-9;

    private static readonly JsonElement Reference = Pins.Json("09-evidence-over-principles.json");

    public static TheoryData<string> Cases() => new(Reference.GetProperty("cases").EnumerateArray().Select(item => item.GetProperty("name").GetString()!));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_case_equals_the_reference(string name)
    {
        var item = Reference.GetProperty("cases").EnumerateArray().Single(candidate => candidate.GetProperty("name").GetString() == name);
        string[] labels = [.. item.GetProperty("labels").EnumerateArray().Select(label => label.GetString()!)];
        var prior = ScorePrior.Of(item.GetProperty("prior_mean").Values(), item.GetProperty("prior_sd").Values());
        List<Observation> studies = [.. item.GetProperty("comparisons").EnumerateArray()
            .Select(study => Observation.Measured(Place(study.GetProperty("a")), Place(study.GetProperty("b")), study.GetProperty("difference").GetDouble(), Math.Pow(study.GetProperty("se").GetDouble(), 2)))];
        var beliefs = BeliefUpdate.Of(prior, studies).Posterior();

        beliefs.Means.ShouldBe(item.GetProperty("posterior_mean").Values(), Tolerance);
        Covariances(beliefs).ShouldBe(item.GetProperty("posterior_cov").Matrix().SelectMany(row => row), Tolerance);
        foreach (var pair in item.GetProperty("p_better").EnumerateObject())
        {
            beliefs.ProbabilityBetter(Array.IndexOf(labels, pair.Name[..1]), Array.IndexOf(labels, pair.Name[2..])).ShouldBe(pair.Value.GetDouble(), Tolerance, pair.Name);
        }

        foreach (var mean in item.GetProperty("mean_rank_score").EnumerateObject())
        {
            beliefs.MeanProbabilityBetter(Array.IndexOf(labels, mean.Name)).ShouldBe(mean.Value.GetDouble(), Tolerance);
        }

        foreach (var (conflict, study) in item.GetProperty("prior_evidence_conflict").EnumerateArray().Zip(studies))
        {
            var actual = PriorConflict.Of(prior, study);
            (actual.Expected, actual.Found).ShouldBe((conflict.GetProperty("prior_difference").GetDouble(), conflict.GetProperty("evidence").GetDouble()));
            actual.Z.ShouldBe(conflict.GetProperty("z").GetDouble(), Tolerance);
        }

        List<HeldOrder> held = [.. item.GetProperty("must_hold").EnumerateArray().Select(pair => new HeldOrder(Place(pair[0]), Place(pair[1]), item.GetProperty("delta").GetDouble()))];
        double[] scores = [.. beliefs.Means];
        var multipliers = HeldOrders.Of(labels.Length, beliefs.Covariance, held).Apply(scores);
        scores.ShouldBe(item.GetProperty("projected").Values(), Tolerance);
        multipliers.ShouldBe(item.GetProperty("multipliers").Values(), Tolerance);

        int Place(JsonElement label) => Array.IndexOf(labels, label.GetString());
    }

    /// <summary>By hand: prior 20 and 0, deviation 1, likeness 0.5 of the tested handle (1) and its untested cousin (2); the study finds 1 above 0 by 3 with variance 2 - so 4 in all with the prior's 2. The force is 23 / 4, the cousin moves by 0.5 of that.</summary>
    [Fact]
    public void A_study_reaches_the_cousin_of_what_it_tested()
    {
        var prior = ScorePrior.Of([20, 0, 0], [1, 1, 1], (i, j) => i + j == 3 ? 0.5 : 0);
        var beliefs = BeliefUpdate.Of(prior, [Observation.Measured(1, 0, 3, 2)]).Posterior();
        beliefs.Means.ShouldBe([20 - 5.75, 5.75, 2.875], Tolerance);
        beliefs.Forces.ShouldBe([5.75], Tolerance);
        beliefs.Pull(0, 2).ShouldBe(2.875, Tolerance);
    }

    [Fact]
    public void The_pulls_of_all_studies_sum_to_the_shift_and_the_posterior_balances() => Worlds.Any.Sample(world =>
    {
        var beliefs = world.Posterior();
        for (var i = 0; i < world.Prior.Count; i++)
        {
            Enumerable.Range(0, world.Studies.Count).Sum(study => beliefs.Pull(study, i)).ShouldBe(beliefs.Means[i] - world.Prior.Means[i], 1e-7);
        }

        for (var study = 0; study < world.Studies.Count; study++)
        {
            var missing = world.Studies[study].Value - (beliefs.Means[world.Studies[study].Terms[0].Score] - beliefs.Means[world.Studies[study].Terms[1].Score]);
            var wanted = world.Studies[study].Kind == ObservationKind.AtLeast ? Math.Max(0, missing) : missing;
            beliefs.Forces[study].ShouldBe(wanted / world.Studies[study].Variance, 1e-7);
        }
    });

    [Fact]
    public void The_order_of_studies_does_not_matter_to_the_last_bit() => Worlds.Any.Sample(world =>
        BeliefUpdate.Of(world.Prior, [.. world.Studies.Reverse()]).Posterior().Means.ShouldBe(world.Posterior().Means));

    /// <summary>Checked by what defines the answer: orders kept, multipliers not below 0 and 0 where there is room, and the move made of them alone.</summary>
    [Fact]
    public void Held_orders_satisfy_what_defines_the_smallest_move() => Gen.Select(Worlds.Apart, Gen.Int[0, 9].Array[2].Where(pair => pair[0] != pair[1]).Array[0, 14], Gen.Double[0, 5]).Sample((world, pairs, margin) =>
    {
        var beliefs = world.Posterior();
        List<HeldOrder> orders = [.. pairs.Where(pair => pair.Max() < world.Prior.Count).Select(pair => new HeldOrder(pair.Min(), pair.Max(), margin))];
        double[] scores = [.. beliefs.Means];
        var held = HeldOrders.Of(scores.Length, beliefs.Covariance, orders);
        var multipliers = held.Apply(scores);
        for (var k = 0; k < orders.Count; k++)
        {
            var room = scores[orders[k].Above] - scores[orders[k].Below] - margin;
            room.ShouldBeGreaterThan(-1e-8);
            multipliers[k].ShouldBeGreaterThanOrEqualTo(0);
            (multipliers[k] * room).ShouldBe(0, 1e-6);
        }

        for (var i = 0; i < scores.Length; i++)
        {
            Enumerable.Range(0, orders.Count).Sum(k => held.Pull(multipliers, k, i)).ShouldBe(scores[i] - beliefs.Means[i], 1e-7);
        }
    });

    [Fact]
    public void Circles_are_found_and_named()
    {
        OrderCycles.Find([new(0, 1, 0), new(1, 2, 0), new(2, 0, 0), new(2, 3, 0), new(4, 5, 0), new(5, 4, 0)]).Select(cycle => string.Join(">", cycle)).ShouldBe(["0>1>2", "4>5"]);
        OrderCycles.Find([new(0, 1, 0), new(0, 2, 0), new(1, 2, 0)]).ShouldBeEmpty();
        Should.Throw<StatisticsInputException>(() => HeldOrders.Of(3, (i, j) => i == j ? 1 : 0, [new(2, 1, 0), new(1, 2, 0)])).Message
            .ShouldBe("These orders go round in a circle, each above the next: 1, 2. Let go of one order of each circle.");
    }

    [Fact]
    public void Orders_of_things_wholly_alike_cannot_hold()
    {
        double[] scores = [1, 2];
        Should.Throw<StatisticsInputException>(() => HeldOrders.Of(2, (_, _) => 4, [new(0, 1, 0)]).Apply(scores)).Message.ShouldStartWith("These orders cannot hold together");
    }

    [Fact]
    public void Bad_beliefs_are_refused_in_words()
    {
        var prior = ScorePrior.Of([1, 2], [1, 1]);
        Says("The standard deviation of a score must be above 0, but is 0.", () => ScorePrior.Of([1], [0]));
        Says("Means and standard deviations must be equally many, but are 1 and 2.", () => ScorePrior.Of([1], [1, 1]));
        Says("The mean of a score must be a number, but is NaN.", () => ScorePrior.Of([double.NaN], [1]));
        Says("The variance of a study must be above 0, but is 0.", () => Observation.Measured(0, 1, 1, 0));
        Says("A study compares two scores, but was given one with itself.", () => Observation.AtLeast(1, 1, 1, 1));
        Says("A score that a study speaks of must be a place from 0 to 1, but is 2.", () => BeliefUpdate.Of(prior, [Observation.Measured(0, 2, 1, 1)]));
        Says("A likeness must lie from -1 to 1.", () => BeliefUpdate.Of(ScorePrior.Of([1, 2], [1, 1], (_, _) => 1.5), [Observation.Measured(0, 1, 1, 1)]));
        Says("The likenesses cannot be those of one set of things: together they contradict one another.", () => BeliefUpdate.Of(
            ScorePrior.Of([1, 2, 3], [1, 1, 1], (_, _) => -1), [Observation.OfTerms(ObservationKind.Measured, [new(0, 1), new(1, 1), new(2, 1)], 1, 0.1)]).Posterior());
    }

    private static void Says(string message, Func<object> make) => Should.Throw<StatisticsInputException>(() => make()).Message.ShouldBe(message);

    private static IEnumerable<double> Covariances(ScoreBeliefs beliefs) =>
        from i in Enumerable.Range(0, beliefs.Means.Count) from j in Enumerable.Range(0, beliefs.Means.Count) select beliefs.Covariance(i, j);
}
