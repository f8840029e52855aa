using CsCheck;
using ScoreRules.Catalogue;
using ScoreRules.Guarding.Breaking;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Guarding.Breaking;

/// <summary>The smallest choice of sets, against trying every choice.</summary>
public sealed class SetCoverTests
{
    [Fact]
    public void It_finds_fewer_than_the_greedy_rule_where_that_falls_into_its_trap()
    {
        var cover = SetCover.Find(6, [Set(6, 0, 1, 3, 4), Set(6, 0, 1, 2), Set(6, 3, 4, 5)]);
        cover.Greedy.ShouldBe(3);
        cover.Chosen.ShouldBe([1, 2]);
        cover.IsSmallest.ShouldBeTrue();
    }

    [Fact]
    public void Of_equal_sets_the_earlier_is_taken() => SetCover.Find(2, [Set(2, 0), Set(2, 0, 1), Set(2, 0, 1)]).Chosen.ShouldBe([1]);

    [Fact]
    public void It_is_as_small_as_the_smallest_of_all_choices_and_holds_every_item() =>
        Gen.Select(Gen.Int[1, 9], Gen.Int[1, 9]).SelectMany((items, sets) => Gen.Bool.Array[items].Array[sets].Select(held => (items, held))).Sample(sample =>
        {
            var (items, held) = sample;
            var sets = held.Select(one => Set(items, [.. Enumerable.Range(0, items).Where(item => one[item])])).Append(RowSet.All(items)).ToList();
            sets = [.. sets.Take(sets.Count - 1), .. Enumerable.Range(0, items).Where(item => !held.Any(one => one[item])).Select(item => Set(items, item))];
            var cover = SetCover.Find(items, sets);
            cover.IsSmallest.ShouldBeTrue();
            Holds(items, sets, cover.Chosen).ShouldBeTrue();
            cover.Chosen.Length.ShouldBe(Smallest(items, sets));
            cover.Greedy.ShouldBeGreaterThanOrEqualTo(cover.Chosen.Length);
        });

    private static int Smallest(int items, List<RowSet> sets) =>
        Enumerable.Range(0, 1 << sets.Count).Select(choice => Enumerable.Range(0, sets.Count).Where(set => (choice >> set & 1) == 1).ToList())
            .Where(choice => Holds(items, sets, choice)).Min(choice => choice.Count);

    private static bool Holds(int items, List<RowSet> sets, IEnumerable<int> choice)
    {
        var chosen = choice.ToList();
        return Enumerable.Range(0, items).All(item => chosen.Exists(set => sets[set].Contains(item)));
    }

    private static RowSet Set(int items, params int[] held) => RowSet.Of(items, held);
}
