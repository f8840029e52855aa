using System.Collections.Immutable;
using ScoreRules.Tiering;

namespace ScoreRules.Teaching;

/// <summary>
/// The spanning tree of greatest total likeness over a set of things, by Prim's algorithm. Likeness is compared as rounded; where two
/// pairs are equally alike, the pair whose lower number is smaller comes first, then the one whose higher number is. So there
/// is one tree, whatever the order of the files was.
/// </summary>
/// <remarks>
/// In any order that starts at the root and puts a parent before its children, a parent is the most alike of all things that came
/// before: the way from any other of them leads over the edge to the parent, and no edge on that way is less alike than the short cut.
/// </remarks>
public static class LikenessTree
{
    /// <summary>Likeness of two things that have nothing known in common: below every other.</summary>
    private const double Nothing = -1;

    /// <summary>All things in reading order: the root, then each branch to its end, the most alike branch first.</summary>
    /// <param name="count">How many things there are, numbered from 0.</param>
    /// <param name="root">The first of them.</param>
    /// <param name="likeness">Likeness of two, the same in both directions; NaN where nothing is known of both.</param>
    public static ImmutableArray<TreeNode> Walk(int count, int root, Func<int, int, double> likeness)
    {
        var edges = Grow(count, root, (one, other) => likeness(one, other) is var alike && double.IsNaN(alike) ? Nothing : Rounding.Compared(alike));
        var children = edges.ToLookup(edge => edge.Parent);
        var walk = ImmutableArray.CreateBuilder<TreeNode>(count);
        var open = new Stack<Edge>([new Edge(root, root, 1)]);
        while (open.TryPop(out var at))
        {
            walk.Add(new TreeNode(at.Child, at.Child == root ? null : at.Parent, at.Likeness == Nothing ? double.NaN : at.Likeness));
            foreach (var edge in children[at.Child].OrderBy(edge => edge.Likeness).ThenByDescending(edge => edge.Child))
            {
                open.Push(edge);
            }
        }

        return walk.MoveToImmutable();
    }

    private static List<Edge> Grow(int count, int root, Func<int, int, double> likeness)
    {
        var (outside, edges) = (Enumerable.Range(0, count).Where(one => one != root).ToDictionary(one => one, one => new Edge(root, one, likeness(root, one))), new List<Edge>(count));
        while (outside.Count > 0)
        {
            var next = outside.Values.MinBy(edge => edge.Key)!;
            edges.Add(next);
            outside.Remove(next.Child);
            foreach (var one in outside.Keys.ToList())
            {
                var other = new Edge(next.Child, one, likeness(next.Child, one));
                outside[one] = other.Key.CompareTo(outside[one].Key) < 0 ? other : outside[one];
            }
        }

        return edges;
    }

    private sealed record Edge(int Parent, int Child, double Likeness)
    {
        // The best edge has the smallest key.
        public (double Unlike, int Low, int High) Key => (-Likeness, Math.Min(Parent, Child), Math.Max(Parent, Child));
    }
}
