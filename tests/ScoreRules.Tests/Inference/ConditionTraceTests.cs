using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;
using Verdict = ScoreRules.Inference.Verdict;

namespace ScoreRules.Tests.Inference;

public sealed class ConditionTraceTests
{
    private readonly Scene scene = new("a", "b", "c");
    private readonly AttributeTest stretched;
    private readonly AttributeTest supported;
    private readonly AttributeTest freeGrip;

    public ConditionTraceTests()
    {
        stretched = scene.Rating("stretch", 4, 1, null).That(Comparison.AtLeast, 3);
        supported = scene.Rating("support", 4, 0, 0).That(Comparison.AtLeast, 3);
        freeGrip = scene.Word("grip", "free fixed", "fixed", "free", null).That(Comparison.Is, "free");
    }

    [Fact]
    public void A_test_tells_the_fact_it_found()
    {
        var trace = Explain(stretched, 1);
        trace.Verdict.ShouldBe(Verdict.DidNotHold);
        trace.Attribute.ShouldBe(stretched.Attribute);
        trace.Fact.ShouldBe(new CatalogueFact(FactValue.Of(1), FactOrigin.Stated, null, Ask.Here));
    }

    [Fact]
    public void A_condition_that_held_has_nothing_that_decided_against_it() => Explain(stretched, 0).FirstDecisive().ShouldBeNull();

    [Fact]
    public void Parts_stand_in_source_order_with_their_answers() =>
        Explain(Ask.All(stretched, supported, freeGrip), 2).Parts.Select(part => part.Verdict)
            .ShouldBe([Verdict.CouldNotTell, Verdict.DidNotHold, Verdict.CouldNotTell]);

    [Fact]
    public void A_part_that_failed_decides_before_one_that_could_not_be_told() =>
        Explain(Ask.All(stretched, supported), 2).FirstDecisive()!.Condition.ShouldBeSameAs(supported);

    [Fact]
    public void Of_parts_that_failed_the_first_is_told() =>
        Explain(Ask.All(freeGrip, stretched, supported), 1).FirstDecisive()!.Condition.ShouldBeSameAs(stretched);

    [Fact]
    public void Of_alternatives_that_all_failed_the_first_is_told() =>
        Explain(Ask.Any(Ask.All(freeGrip, stretched), supported), 1).FirstDecisive()!.Condition.ShouldBeSameAs(stretched);

    [Fact]
    public void An_unknown_fact_is_found_behind_unless_and_called_facts()
    {
        scene.Calls.Add(Ask.Call("loose", Ask.All(Ask.Always(), freeGrip)));
        var decisive = Explain(Ask.All(Ask.Always(), Ask.Unless(Ask.Called("loose"))), 2).FirstDecisive()!;
        decisive.Condition.ShouldBeSameAs(freeGrip);
        decisive.Fact.ShouldBe(CatalogueFact.NotSaid);
    }

    [Fact]
    public void An_unless_that_failed_is_told_as_written_with_the_fact_behind_it()
    {
        var unless = Ask.Unless(stretched);
        var decisive = Explain(Ask.All(supported, unless), 0).FirstDecisive()!;
        decisive.Condition.ShouldBeSameAs(unless);
        decisive.Attribute.ShouldBe(stretched.Attribute);
        decisive.Fact!.Value.Number.ShouldBe(4);
    }

    [Fact]
    public void A_called_fact_that_failed_is_told_by_name_and_shows_each_way_in()
    {
        scene.Calls.Add(Ask.Call("good", stretched));
        scene.Calls.Add(Ask.Call("good", supported));
        var decisive = Explain(Ask.Called("good"), 1).FirstDecisive()!;
        decisive.Condition.ShouldBeOfType<CalledTest>();
        decisive.Parts.Select(way => way.Condition).ShouldBe([stretched, supported]);
        decisive.Parts.Select(way => way.Call).ShouldBe(scene.Calls);
        decisive.Parts.ShouldAllBe(way => way.Verdict == Verdict.DidNotHold && !way.IsOutOfScope);
    }

    [Fact]
    public void A_way_in_that_is_not_about_the_movement_says_so()
    {
        var call = Ask.Call("good", stretched);
        scene.Calls.Add(call with { Info = call.Info with { ExceptFor = [Ask.Movement("a")] } });
        var trace = Explain(Ask.Called("good"), 0);
        trace.Verdict.ShouldBe(Verdict.DidNotHold);
        trace.Parts[0].Verdict.ShouldBe(Verdict.DidNotHold);
        trace.Parts[0].IsOutOfScope.ShouldBeTrue();
        trace.FirstDecisive()!.Condition.ShouldBeOfType<CalledTest>();
    }

    [Fact]
    public void Facts_that_share_their_roots_many_times_over_are_explained_at_once()
    {
        // Forty levels, each asking twice for the one below: unfolded whole, it would have 2 to the power of 40 parts.
        scene.Calls.Add(Ask.Call("fact 0", stretched));
        for (var level = 1; level <= 40; level++)
        {
            scene.Calls.Add(Ask.Call($"fact {level}", Ask.All(Ask.Called($"fact {level - 1}"), Ask.Called($"fact {level - 1}")), level));
        }

        Explain(Ask.Called("fact 40"), 2).FirstDecisive()!.Condition.ShouldBeSameAs(stretched);
    }

    private ConditionTrace Explain(Condition condition, int row)
    {
        scene.Acting.Add(Ask.Give(condition));
        return ConditionTrace.Explain(condition, row, scene.Infer());
    }
}
