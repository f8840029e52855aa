using System.Collections.Immutable;
using CsCheck;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

public sealed class CatalogueOrderTests
{
    private static readonly Gen<(int Like, bool IsTrained, int Stretch, bool IsBut, int SetUp)> Plan =
        Gen.Select(Gen.Int[-1, 7], Gen.Bool, Gen.Int[-1, 4], Gen.Bool, Gen.Int[-1, 90]);

    private static readonly Gen<ImmutableArray<MovementDeclaration>> Movements =
        Plan.Array[1, 8].Select(plans => MovementText.Parse(string.Concat(plans.Select(Text))));

    [Fact]
    public void The_order_of_declarations_and_of_their_facts_changes_nothing()
    {
        Movements.SelectMany(movements => Gen.Shuffle(movements.ToArray()).Select(shuffled => (movements, shuffled))).Sample(pair =>
        {
            var shuffled = pair.shuffled.Select(movement => movement with { Facts = [.. movement.Facts.Reverse()] });
            Digest(Built.From(shuffled)).ShouldBe(Digest(Built.From(pair.movements)));
        });
    }

    [Fact]
    public void Every_inherited_fact_is_the_very_fact_of_the_movement_it_names()
    {
        Movements.Sample(movements =>
        {
            var built = Built.From(movements);
            foreach (var (movement, index) in built.Catalogue.Movements.SelectMany(movement => movement.Facts.Select((_, index) => (movement, index))))
            {
                var fact = movement.Facts[index];
                if (fact.InheritedFrom is { } name)
                {
                    var origin = built.Movement(name).Facts[index];
                    origin.InheritedFrom.ShouldBeNull();
                    fact.Location.ShouldBe(origin.Location);
                    fact.Value.ShouldBeSameAs(origin.Value);
                }
            }
        });
    }

    private static string Text((int Like, bool IsTrained, int Stretch, bool IsBut, int SetUp) plan, int index) =>
        $"movement m{index}\n"
        + (plan.Like < 0 ? "" : $"  like m{plan.Like}\n")
        + (plan.IsTrained ? "  trains arms\n" : "")
        + (plan.Stretch < 0 ? "" : $"  {(plan.IsBut ? "but " : "")}stretch is {plan.Stretch}\n")
        + (plan.SetUp < 0 ? "" : $"  at a guess set-up is {plan.SetUp} s\n")
        + (plan.SetUp < 60 ? "" : "  set-up is 5 s\n");

    private static string Digest(Built built)
    {
        var facts = built.Catalogue.Movements.SelectMany(movement => movement.Facts.Select(fact =>
            $"{movement.Index} {movement.Name} {movement.Like} {movement.Trains.Length} {fact.Value.Number} {fact.Origin} {fact.InheritedFrom} {fact.Location?.Line}"));
        var findings = built.Findings.ToSorted().Select(finding => $"{finding.Code} {finding.Location.Span} {finding.Headline} {string.Join('|', finding.Others.Select(other => other.Location.Span))}");
        return string.Join('\n', facts.Concat(findings));
    }
}
