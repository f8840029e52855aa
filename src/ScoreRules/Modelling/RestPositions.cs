using System.Collections.Frozen;
using ScoreRules.Mechanics.Figures;

namespace ScoreRules.Modelling;

/// <summary>From the word for a body's position to how limbs lie that the movement says nothing about; for pictures only.</summary>
internal static class RestPositions
{
    private static readonly FrozenDictionary<string, RestPosition> ByWord = new Dictionary<string, RestPosition>(StringComparer.Ordinal)
    {
        ["seated"] = RestPosition.Seated,
        ["incline-seated"] = RestPosition.Seated,
        ["seated-reclined"] = RestPosition.Seated,
        ["long sitting"] = RestPosition.LongSitting,
        ["supine"] = RestPosition.Supine,
        ["supine-hanging"] = RestPosition.Prone,
        ["shoulders on bench"] = RestPosition.Supine,
        ["prone"] = RestPosition.Prone,
        ["prone-incline"] = RestPosition.Prone,
        ["side lying"] = RestPosition.Prone,
        ["hanging"] = RestPosition.Prone,
        ["hanging-supported"] = RestPosition.Prone,
        ["kneeling"] = RestPosition.Kneeling,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The position; standing for a word that is not listed.</summary>
    public static RestPosition Of(string word) => ByWord.GetValueOrDefault(word, RestPosition.Standing);
}
