using ScoreRules.Inference;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

public sealed class ChainingTests
{
    private readonly Scene scene = new("a", "b", "c", "d");
    private readonly AttributeDefinition tension;
    private readonly AttributeDefinition support;

    public ChainingTests()
    {
        tension = scene.Rating("long tension", 4, 0, 4, null);
        support = scene.Rating("external support", 0, 4, 4, 0);
    }

    [Fact]
    public void A_called_fact_holds_where_its_condition_holds()
    {
        scene.Calls.Add(Ask.Call("long-loaded", tension.That(Comparison.AtLeast, 3)));
        Concept("long-loaded").ShouldBe("+-+?");
    }

    [Fact]
    public void Several_ways_in_are_alternatives()
    {
        scene.Calls.Add(Ask.Call("good", tension.That(Comparison.AtLeast, 3)));
        scene.Calls.Add(Ask.Call("good", support.That(Comparison.AtLeast, 3)));
        Concept("good").ShouldBe("+++?");
    }

    [Fact]
    public void Two_statements_that_say_the_same_are_kept_apart_and_count_once()
    {
        // Equal records from two rules are what makes an engine with facts by value fail.
        scene.Calls.Add(Ask.Call("good", tension.That(Comparison.AtLeast, 3)));
        scene.Calls.Add(Ask.Call("good", tension.That(Comparison.AtLeast, 3)));
        var award = Ask.Give(Ask.Called("good"));
        scene.Acting.Add(award);
        var inferred = scene.Infer();
        Scene.Signs(inferred.Outcome(award).Effective).ShouldBe("+-+-");
        inferred.Firings.ShouldBe(4, "two ways in, one completion, one award");
    }

    [Fact]
    public void Or_across_called_facts_fires_once_however_many_hold()
    {
        scene.Calls.Add(Ask.Call("long", tension.That(Comparison.AtLeast, 3)));
        scene.Calls.Add(Ask.Call("held up", support.That(Comparison.AtLeast, 3)));
        var award = Ask.Give(Ask.Any(Ask.Called("long"), Ask.Called("held up")));
        scene.Acting.Add(award);
        var inferred = scene.Infer();
        Scene.Signs(inferred.Outcome(award).Condition).ShouldBe("+++?");
        inferred.Firings.ShouldBe(5, "two ways in, two completions, one award");
    }

    [Fact]
    public void Unless_waits_until_the_called_fact_is_complete()
    {
        // The refusal stands first, has the better priority and must still see the last way in.
        scene.Calls.Add(Ask.Call("plain", Ask.Unless(Ask.Called("good")), stratum: 0));
        scene.Calls.Add(Ask.Call("good", support.That(Comparison.AtLeast, 3), stratum: 1));
        scene.Calls.Add(Ask.Call("good", Ask.Called("long"), stratum: 1));
        scene.Calls.Add(Ask.Call("long", tension.That(Comparison.AtLeast, 3), stratum: 2));
        Concept("plain").ShouldBe("---?");
    }

    [Fact]
    public void A_chain_may_be_long()
    {
        scene.Calls.Add(Ask.Call("fact 0", tension.That(Comparison.AtLeast, 3)));
        for (var link = 1; link <= 60; link++)
        {
            scene.Calls.Add(Ask.Call($"fact {link}", Ask.Unless(Ask.Called($"fact {link - 1}")), link));
        }

        Concept("fact 59").ShouldBe("-+-?");
        Concept("fact 60").ShouldBe("+-+?");
    }

    [Fact]
    public void A_fact_that_no_statement_makes_never_holds_and_holds_nothing_up()
    {
        scene.Answer(Ask.Called("nobody calls this")).ShouldBe("----");
        scene.Answer(Ask.Unless(Ask.Called("nobody calls this"))).ShouldBe("++++");
    }

    [Fact]
    public void A_fact_that_nobody_asks_for_or_makes_is_empty() => Concept("no such name").ShouldBe("----");

    [Fact]
    public void Names_of_called_facts_are_compared_without_regard_to_case()
    {
        scene.Calls.Add(Ask.Call("Long-loaded", tension.That(Comparison.AtLeast, 3)));
        scene.Answer(Ask.Called("long-LOADED")).ShouldBe("+-+?");
    }

    [Fact]
    public void A_house_without_rules_or_without_rows_is_judged_too()
    {
        scene.Infer().Firings.ShouldBe(0);
        var empty = new Scene();
        var award = Ask.Give(Ask.Always());
        empty.Acting.Add(award);
        empty.Targets.Add(new TargetDefinition(Ask.Info("target", "arms"), [], "", null));
        empty.Infer().Outcome(award).Effective.ShouldBeEmpty();
    }

    [Fact]
    public void Called_facts_that_wait_for_one_another_are_refused_by_name()
    {
        scene.Calls.Add(Ask.Call("good", Ask.Called("fine")));
        scene.Calls.Add(Ask.Call("fine", Ask.Unless(Ask.Called("good"))));
        Should.Throw<InferenceException>(() => scene.Infer()).Message
            .ShouldBe("Rules that wait for one another in a circle cannot be applied: call \"good\" (by-hand.rules:1) -> call \"fine\" (by-hand.rules:1) -> call \"good\" (by-hand.rules:1).");
    }

    [Fact]
    public void A_fault_while_a_rule_acts_names_the_rule()
    {
        scene.Acting.Add(Ask.Give(new Strange(), "odd one"));
        var fault = Should.Throw<InferenceException>(() => scene.Infer());
        fault.Rule!.Name.ShouldBe("odd one");
        fault.Message.ShouldBe("The rule give \"odd one\" (by-hand.rules:1) could not be applied: A condition of the kind Strange cannot be answered.");
    }

    [Fact]
    public void A_plan_may_be_run_over_several_tables()
    {
        var award = Ask.Give(tension.That(Comparison.AtLeast, 3));
        scene.Acting.Add(award);
        var plan = InferencePlan.Compile(scene.Ruleset());
        var first = plan.Run(scene.Table());
        var second = plan.Run(scene.Table());
        second.Outcome(award).Effective.ShouldBe(first.Outcome(award).Effective);
        second.Firings.ShouldBe(1);
    }

    private string Concept(string name) => Scene.Signs(scene.Infer().Concept(name));

    private sealed record Strange() : Condition(Ask.Here);
}
