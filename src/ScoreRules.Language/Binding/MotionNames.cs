using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>The motions that a movement may keep or go through, with the words for both directions.</summary>
public static class MotionNames
{
    private static readonly ImmutableArray<(string Positive, string Negative)> Pairs =
    [
        ("trunk pitch", "trunk recline"),
        ("trunk roll", ""),
        ("shoulder flexion", "shoulder extension"),
        ("shoulder abduction", "shoulder adduction"),
        ("shoulder horizontal-adduction", "shoulder horizontal-abduction"),
        ("shoulder external rotation", "shoulder internal rotation"),
        ("elbow flexion", "elbow extension"),
        ("forearm supination", "forearm pronation"),
        ("wrist extension", "wrist flexion"),
        ("hip flexion", "hip extension"),
        ("hip abduction", "hip adduction"),
        ("knee flexion", "knee extension"),
        ("ankle dorsiflexion", "ankle plantarflexion"),
    ];

    /// <summary>All words, as messages list them.</summary>
    public static ImmutableArray<string> All { get; } = [.. Pairs.SelectMany(pair => new[] { pair.Positive, pair.Negative }).Where(word => word.Length > 0)];

    /// <summary>The positive direction of each motion, in anatomical order from the trunk outward.</summary>
    public static ImmutableArray<string> Positive { get; } = [.. Pairs.Select(pair => pair.Positive)];

    /// <summary>The motion a word means, or null.</summary>
    /// <param name="word">As written.</param>
    /// <returns>The word for its positive direction, and 1 or -1 for the direction written.</returns>
    public static (string Motion, int Sign)? Find(string word)
    {
        var key = NameText.Key(word);
        var pair = Pairs.FirstOrDefault(pair => key.Length > 0 && (key == pair.Positive || key == pair.Negative));
        return pair.Positive is null ? null : (pair.Positive, key == pair.Positive ? 1 : -1);
    }
}
