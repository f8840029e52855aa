using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>The same demand or fact with the other verb: "is" where "has" was written, and the other way about.</summary>
internal static class VerbRepair
{
    private static readonly (string Is, string Has)[] Pairs = [("is one of", "has any of"), ("is none of", "has none of"), ("is other than", "has none of"), ("is", "has")];

    /// <summary>The suggestion to write the other verb; with an edit where the words between name and value are a plain pair.</summary>
    /// <param name="name">Where the attribute's name stands.</param>
    /// <param name="value">Where its value stands; null when there is none.</param>
    /// <param name="toHas">Whether "has" is right.</param>
    /// <param name="statement">The statement it stands in.</param>
    public static Suggestion For(SourceSpan name, SourceSpan? value, bool toHas, StatementSyntax statement)
    {
        var between = SourceSpan.FromBounds(name.End, value?.Start ?? name.End);
        var written = NameText.Key(statement.Source.Slice(between)).Trim();
        var pair = Array.Find(Pairs, pair => (toHas ? pair.Is : pair.Has) == written);
        var right = pair.Is is null ? (toHas ? "has" : "is") : toHas ? pair.Has : pair.Is;
        return pair.Is is null
            ? new Suggestion($"write \"{right} ...\"")
            : new Suggestion($"write \"{right}\"", new TextEdit(statement.At(between), $" {right} "), EditSafety.Safe);
    }
}
