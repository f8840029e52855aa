namespace ScoreRules.Language.Diagnostics;

/// <summary>
/// How far a written phrase is from a fixed one, word by word: "higher than" is not nearly "other than", although the two
/// share most of their letters.
/// </summary>
internal static class PhraseDistance
{
    /// <summary>The sum of the distances of the words; <see cref="int.MaxValue"/> when a word is too far from its fellow.</summary>
    /// <param name="written">What was written.</param>
    /// <param name="phrase">The fixed phrase.</param>
    public static int Between(string written, string phrase)
    {
        var (left, right) = (written.ToLowerInvariant().Split(' '), phrase.ToLowerInvariant().Split(' '));
        if (left.Length != right.Length)
        {
            // A blank lost or too many: "atleast", "be tween".
            return NameDistance.Between(string.Concat(left), string.Concat(right), 1);
        }

        var total = 0;
        for (var i = 0; i < left.Length; i++)
        {
            var distance = NameDistance.Between(left[i], right[i], Math.Max(1, right[i].Length / 3));
            if (distance == int.MaxValue || (right[i].Length <= 2 && distance > 0 && left.Length > 1 && total > 0))
            {
                return int.MaxValue;
            }

            total += distance;
        }

        return total;
    }
}
