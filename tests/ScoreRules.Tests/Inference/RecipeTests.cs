using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

public sealed class RecipeTests
{
    private readonly Scene scene = new("a", "b", "c");
    private readonly AttributeDefinition load;

    public RecipeTests() => load = scene.Measure("load", 10, -4, null);

    [Theory]
    [InlineData(RecipeOperation.Plus, 2, 12, -2)]
    [InlineData(RecipeOperation.Minus, 2, 8, -6)]
    [InlineData(RecipeOperation.Times, 3, 30, -12)]
    [InlineData(RecipeOperation.DividedBy, 4, 2.5, -1)]
    [InlineData(RecipeOperation.DividedBy, 0, double.NaN, double.NaN)]
    [InlineData(RecipeOperation.AtLeast, 3, 10, 3)]
    [InlineData(RecipeOperation.AtMost, 3, 3, -4)]
    [InlineData(RecipeOperation.StartWith, 3, 3, 3)]
    public void A_step_changes_the_number_so_far(RecipeOperation operation, double number, double forA, double forB)
    {
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, load), Ask.Step(operation, number));
        Numbers(made).ShouldBe([forA, forB, operation == RecipeOperation.StartWith ? 3 : double.NaN]);
    }

    [Fact]
    public void A_step_may_read_an_attribute_and_is_unknown_where_that_is()
    {
        var extra = scene.Measure("extra", 1, null, 1);
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, 5), Ask.Step(RecipeOperation.Plus, extra));
        Numbers(made).ShouldBe([6, double.NaN, 6]);
    }

    [Fact]
    public void A_step_is_left_out_where_its_condition_does_not_hold_and_spoils_the_number_where_it_cannot_be_told()
    {
        var isHeavy = load.That(Comparison.AtLeast, 5);
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, 1), Ask.Step(RecipeOperation.Plus, 60, isHeavy));
        Numbers(made).ShouldBe([61, 1, double.NaN]);
    }

    [Fact]
    public void An_unknown_operand_of_a_step_that_is_not_done_does_no_harm()
    {
        var extra = scene.Measure("extra", null, null, null);
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, 1), Ask.Step(RecipeOperation.Plus, extra, Ask.Unless(Ask.Always())));
        Numbers(made).ShouldBe([1, 1, 1]);
    }

    [Fact]
    public void A_recipe_may_rest_on_another_and_on_called_facts_whatever_their_order()
    {
        var twice = scene.WorkOut("twice", Ask.Step(RecipeOperation.StartWith, load), Ask.Step(RecipeOperation.Times, 2));
        var last = scene.WorkOut("last", Ask.Step(RecipeOperation.StartWith, twice), Ask.Step(RecipeOperation.Plus, 100, Ask.Called("heavy")));
        scene.Recipes.Reverse();
        scene.Calls.Add(Ask.Call("heavy", twice.That(Comparison.AtLeast, 20)));
        Numbers(last).ShouldBe([120, -8, double.NaN]);
    }

    [Fact]
    public void Worked_out_numbers_are_tested_like_given_ones()
    {
        var twice = scene.WorkOut("twice", Ask.Step(RecipeOperation.StartWith, load), Ask.Step(RecipeOperation.Times, 2));
        scene.Answer(twice.That(Comparison.MoreThan, 19)).ShouldBe("+-?");
    }

    [Fact]
    public void Before_its_first_start_a_number_is_unknown()
    {
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, 1, load.That(Comparison.AtLeast, 0)), Ask.Step(RecipeOperation.Plus, 1));
        Numbers(made).ShouldBe([2, double.NaN, double.NaN]);
    }

    [Fact]
    public void Numbers_beyond_all_bounds_are_unknown()
    {
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, 1e300), Ask.Step(RecipeOperation.Times, 1e300), Ask.Step(RecipeOperation.AtMost, 1));
        Numbers(made).ShouldBe([double.NaN, double.NaN, double.NaN]);
    }

    [Fact]
    public void A_worked_out_fact_says_that_it_was_worked_out_and_where()
    {
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, load));
        var facts = scene.Infer().Facts;
        facts.Fact(0, made).ShouldBe(new CatalogueFact(FactValue.Of(10), FactOrigin.WorkedOut, null, made.Info.Location));
        facts.Fact(2, made).Value.IsKnown.ShouldBeFalse();
    }

    [Fact]
    public void Outside_its_scope_nothing_is_worked_out()
    {
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, 1));
        scene.Recipes[0] = scene.Recipes[0] with { Info = scene.Recipes[0].Info with { ExceptFor = [Ask.Movement("b")] } };
        Numbers(made).ShouldBe([1, double.NaN, 1]);
    }

    [Fact]
    public void Two_recipes_for_one_number_are_refused_by_name()
    {
        scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, 1));
        scene.Recipes.Add(scene.Recipes[0]);
        Should.Throw<InferenceException>(() => scene.Infer()).Message.ShouldStartWith("\"made\" is worked out by two recipes");
    }

    [Fact]
    public void A_recipe_that_waits_for_a_fact_that_waits_for_it_is_refused_by_name()
    {
        var made = scene.WorkOut("made", Ask.Step(RecipeOperation.StartWith, 1, Ask.Called("heavy")));
        scene.Calls.Add(Ask.Call("heavy", made.That(Comparison.AtLeast, 1)));
        Should.Throw<InferenceException>(() => scene.Infer()).Message.ShouldContain("call \"heavy\" (by-hand.rules:1) -> work out \"made\"");
    }

    private double[] Numbers(AttributeDefinition attribute)
    {
        var column = scene.Infer().Facts.Numbers(attribute);
        return [.. Enumerable.Range(0, column.Count).Select(row => column[row])];
    }
}
