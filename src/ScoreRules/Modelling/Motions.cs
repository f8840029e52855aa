using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Modelling;

/// <summary>The words of motions in rule text and the motions of mechanics.</summary>
internal static class Motions
{
    private static readonly ImmutableArray<(string Word, JointMotion Motion)> Pairs = [.. MotionNames.Positive.Zip(Enum.GetValues<JointMotion>())];

    /// <summary>The motion of a word for a positive direction.</summary>
    public static JointMotion Of(string word) => Pairs.Single(pair => pair.Word == word).Motion;

    /// <summary>The word rule text has for a motion.</summary>
    public static string WordOf(JointMotion motion) => Pairs.Single(pair => pair.Motion == motion).Word;
}
