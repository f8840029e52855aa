using CsCheck;
using ScoreRules.Teaching;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Teaching;

/// <summary>
/// The first tree is made by hand (arithmetic of five things, no source): likeness 0-1 .9, 0-2 .5, 1-2 .8, 1-3 .2, 2-3 .7, 3-4 .6, all
/// others .1. Taking the largest that joins something new, from 0: 0-1, 1-2, 2-3, 3-4.
/// </summary>
public sealed class LikenessTreeTests
{
    private static readonly Gen<double[,]> AnyTable =
        from count in Gen.Int[1, 12]
        from steps in Gen.Int[-1, 8].Array[count * count]
        select Table(count, steps);

    [Fact]
    public void A_tree_made_by_hand()
    {
        var table = Filled(5, 0.1, (0, 1, 0.9), (0, 2, 0.5), (1, 2, 0.8), (1, 3, 0.2), (2, 3, 0.7), (3, 4, 0.6));
        Walk(table, 0).ShouldBe([new TreeNode(0, null, 1), new TreeNode(1, 0, 0.9), new TreeNode(2, 1, 0.8), new TreeNode(3, 2, 0.7), new TreeNode(4, 3, 0.6)]);
    }

    [Fact]
    public void A_branch_is_told_to_its_end_and_the_most_alike_branch_first()
    {
        // 0 with 3 (.9) and 1 (.8); 2 hangs on 3, 4 on 1.
        var table = Filled(5, 0.1, (0, 3, 0.9), (0, 1, 0.8), (3, 2, 0.5), (1, 4, 0.7));
        Walk(table, 0).Select(node => (node.Index, node.Parent)).ShouldBe([(0, null), (3, 0), (2, 3), (1, 0), (4, 1)]);
    }

    [Fact]
    public void Where_two_pairs_are_equally_alike_the_lower_numbers_come_first()
    {
        // All alike: everything hangs on the thing with the lowest number, as soon as that is in the tree.
        Walk(Filled(4, 0.5), 2).Select(node => (node.Index, node.Parent)).ShouldBe([(2, null), (0, 2), (1, 0), (3, 0)]);
    }

    [Fact]
    public void What_is_known_of_neither_hangs_on_by_nothing() =>
        Walk(Filled(2, double.NaN), 1).ShouldBe([new TreeNode(1, null, 1), new TreeNode(0, 1, double.NaN)]);

    [Fact]
    public void Every_thing_comes_once_after_its_parent_and_no_earlier_one_is_more_alike() => AnyTable.Sample(table =>
    {
        var count = table.GetLength(0);
        var walk = Walk(table, count / 2);
        walk.Select(node => node.Index).Order().ShouldBe(Enumerable.Range(0, count));
        walk[0].ShouldBe(new TreeNode(count / 2, null, 1));
        for (var i = 1; i < walk.Count; i++)
        {
            var told = walk.Take(i).Select(node => node.Index).ToList();
            told.ShouldContain(walk[i].Parent!.Value);
            told.Max(earlier => Known(table[earlier, walk[i].Index])).ShouldBe(Known(table[walk[i].Parent!.Value, walk[i].Index]));
        }
    });

    // Weight of the best tree by trying every set of edges that could be one: slow, and written by another idea.
    [Fact]
    public void No_other_tree_is_more_alike() => AnyTable.Where(table => table.GetLength(0) <= 5).Sample(table =>
    {
        var count = table.GetLength(0);
        Walk(table, 0).Skip(1).Sum(node => Known(table[node.Index, node.Parent!.Value])).ShouldBe(Best(table, count), 1e-9);
    });

    private static double Best(double[,] table, int count)
    {
        // Every tree with root 0 gives each other thing a parent; those with a circle are thrown away.
        var best = double.NegativeInfinity;
        for (var code = 0; code < Math.Pow(count, count - 1); code++)
        {
            var parents = Enumerable.Range(1, count - 1).Select(one => code / (int)Math.Pow(count, one - 1) % count).ToArray();
            if (Enumerable.Range(1, count - 1).All(one => ReachesRoot(one, parents)))
            {
                best = Math.Max(best, parents.Select((parent, i) => Known(table[i + 1, parent])).Sum());
            }
        }

        return best;
    }

    private static bool ReachesRoot(int one, int[] parents)
    {
        for (var i = 0; i <= parents.Length && one != 0; i++)
        {
            one = parents[one - 1];
        }

        return one == 0;
    }

    private static double Known(double likeness) => double.IsNaN(likeness) ? -1 : likeness;

    private static List<TreeNode> Walk(double[,] table, int root) => [.. LikenessTree.Walk(table.GetLength(0), root, (one, other) => table[one, other])];

    private static double[,] Table(int count, int[] steps)
    {
        var table = new double[count, count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                table[i, j] = table[j, i] = steps[(i * count) + j] < 0 ? double.NaN : steps[(i * count) + j] / 8.0;
            }
        }

        return table;
    }

    private static double[,] Filled(int count, double all, params (int One, int Other, double Likeness)[] pairs)
    {
        var table = new double[count, count];
        for (var i = 0; i < count * count; i++)
        {
            table[i / count, i % count] = all;
        }

        foreach (var (one, other, likeness) in pairs)
        {
            table[one, other] = table[other, one] = likeness;
        }

        return table;
    }
}
