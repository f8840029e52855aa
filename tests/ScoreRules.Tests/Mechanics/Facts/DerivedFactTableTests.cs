using System.Globalization;
using CsCheck;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Tests.Mechanics.Statics;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Facts;

/// <summary>The table of facts is whole, and all movements of the invented catalogue keep to it.</summary>
public sealed class DerivedFactTableTests
{
    private static readonly FactOptions Quick = new() { WithIntervals = false, AcceptsEvenLoad = true };

    private static readonly MuscleTarget Everything = Targets.Of([.. MuscleModel.Muscles.Select(muscle => (muscle.Name, 1.0))]);

    [Fact]
    public void Each_fact_has_its_own_name_and_tells_unit_meaning_and_formula()
    {
        DerivedFacts.All.Select(fact => fact.Name).Distinct().Count().ShouldBe(DerivedFacts.All.Length);
        foreach (var fact in DerivedFacts.All)
        {
            fact.Name.ShouldMatch("^[a-z][a-z -]*[a-z]$");
            fact.Meaning.ShouldEndWith(".");
            fact.Formula.ShouldNotBeNullOrWhiteSpace(fact.Name);
            fact.Unit.ShouldBeOneOf("", "°", "N m");
            DerivedFacts.Find(fact.Name).ShouldBe(fact);
        }

        DerivedFacts.Find("no such fact").ShouldBeNull();
    }

    [Fact]
    public void Each_fact_is_worked_out_for_some_movement()
    {
        var options = Quick with { Support = new(2, false) };
        var found = GeometryRows.All.SelectMany(row => MovementFacts.Of(GeometryRows.Mechanism(row) with { FixedHandle = new Vector3(0, 0, 1) }, Everything, options).Values)
            .Where(value => value.Value is not null).Select(value => value.Fact.Name).ToHashSet();
        DerivedFacts.All.Select(fact => fact.Name).ShouldBe(found, ignoreOrder: true);
    }

    [Fact]
    public void All_130_movements_keep_to_the_ranges_or_say_what_is_missing()
    {
        foreach (var row in GeometryRows.All)
        {
            foreach (var value in MovementFacts.Of(GeometryRows.Mechanism(row), Everything, Quick).Values)
            {
                var name = $"{row["movement"]}: {value.Fact.Name}";
                (value.Value is null).ShouldBe(value.Missing.Length > 0, name);
                (value.Value ?? value.Fact.Low ?? 0).ShouldBeGreaterThanOrEqualTo((value.Fact.Low ?? double.MinValue) - 1e-9, name);
                (value.Value ?? value.Fact.High ?? 0).ShouldBeLessThanOrEqualTo((value.Fact.High ?? double.MaxValue) + 1e-9, name);
            }
        }
    }

    [Fact]
    public void Facts_are_the_same_in_any_culture_and_any_order_of_shares() => Gen.Int[0, GeometryRows.All.Count - 1].Sample(
        at =>
        {
            var mechanism = GeometryRows.Mechanism(GeometryRows.All[at]);
            var target = Targets.Of(("semimembranosus", 33), ("biceps brachii long head", 20), ("soleus", 1), ("deltoid anterior", 2));
            var turned = Targets.Of(("deltoid anterior", 2), ("soleus", 1), ("biceps brachii long head", 20), ("semimembranosus", 33));
            var (here, there) = (Text(mechanism, target), Text(mechanism, turned));
            there.ShouldBe(here);
        },
        iter: 60);

    private static string Text(ScoreRules.Mechanics.Statics.Mechanism mechanism, MuscleTarget target) => string.Join(
        '\n', MovementFacts.Of(mechanism, target, Quick).Values.Select(value => $"{value.Fact.Name} {value.Value?.ToString("0.000000000", CultureInfo.InvariantCulture)}"));
}
