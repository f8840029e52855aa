namespace ScoreRules.Teaching;

/// <summary>One thing in a spanning tree.</summary>
/// <param name="Index">Its number.</param>
/// <param name="Parent">The number of the thing it hangs on; null for the root.</param>
/// <param name="Likeness">Likeness to that thing, 0 to 1; 1 for the root, NaN where nothing is known of both.</param>
public sealed record TreeNode(int Index, int? Parent, double Likeness);
