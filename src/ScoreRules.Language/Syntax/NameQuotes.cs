namespace ScoreRules.Language.Syntax;

/// <summary>How a name must be written.</summary>
internal static class NameQuotes
{
    /// <summary>The name, in quotes where it holds something that a bare name cannot.</summary>
    public static string Of(string name)
    {
        var bare = name.Split(' ').All(word => word.Length > 0 && char.IsLetter(word[0]) && ReservedWords.KindOf(word) == TokenKind.Word
            && word.All(c => char.IsLetterOrDigit(c) || c is '-' or '/' or '.' or '\'' or '’'));
        return bare ? name : $"\"{name}\"";
    }
}
