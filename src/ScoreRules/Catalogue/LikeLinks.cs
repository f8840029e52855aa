using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Catalogue;

/// <summary>Which movement each movement is like, with links that lead nowhere or round in a circle cut.</summary>
internal sealed class LikeLinks
{
    private readonly int[] originals;
    private readonly bool[] cut;

    private LikeLinks(int count)
    {
        originals = new int[count];
        cut = new bool[count];
    }

    /// <summary>Finds all links; reports names that are no movement and circles.</summary>
    public static LikeLinks Find(DeclarationTable table, DiagnosticBag findings)
    {
        var links = new LikeLinks(table.Sorted.Length);
        for (var i = 0; i < table.Sorted.Length; i++)
        {
            links.Connect(i, table, findings);
        }

        foreach (var circle in links.Circles())
        {
            findings.Add(MovementFindings.LikeCircle([.. circle.Select(index => table.Sorted[index])]));
            foreach (var member in circle)
            {
                links.Cut(member);
            }
        }

        return links;
    }

    /// <summary>Index of the movement that this one is like, or -1.</summary>
    public int OriginalOf(int index) => originals[index];

    /// <summary>Whether a <c>like</c> was written but cannot be followed, which has been reported.</summary>
    public bool IsCut(int index) => cut[index];

    private void Connect(int index, DeclarationTable table, DiagnosticBag findings)
    {
        var declaration = table.Sorted[index];
        originals[index] = declaration.Like is null ? -1 : table.IndexOf(declaration.Like);
        // The binder leaves the place but not the name when it could not find the movement.
        var isWritten = declaration.Like is not null || declaration.LikeLocation is not null;
        cut[index] = originals[index] < 0 && isWritten;
        if (originals[index] < 0 && declaration.Like is not null)
        {
            findings.Add(MovementFindings.LikeNobody(declaration, table.Sorted.Select(other => other.Name)));
        }
    }

    // Every movement has at most one link, so each walk either ends or runs into one circle.
    private List<List<int>> Circles()
    {
        var circles = new List<List<int>>();
        var walk = new int[originals.Length];
        for (var start = 0; start < originals.Length; start++)
        {
            var at = start;
            while (at >= 0 && walk[at] == 0)
            {
                walk[at] = start + 1;
                at = originals[at];
            }

            if (at >= 0 && walk[at] == start + 1)
            {
                circles.Add(CircleThrough(at));
            }
        }

        return circles;
    }

    private List<int> CircleThrough(int member)
    {
        var first = member;
        for (var at = originals[member]; at != member; at = originals[at])
        {
            first = Math.Min(first, at);
        }

        var circle = new List<int> { first };
        for (var at = originals[first]; at != first; at = originals[at])
        {
            circle.Add(at);
        }

        return circle;
    }

    private void Cut(int index)
    {
        originals[index] = -1;
        cut[index] = true;
    }
}
