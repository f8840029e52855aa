namespace ScoreRules.Tests.Documentation.Editor;

/// <summary>A line with the scope of each of its characters; null where there is none.</summary>
internal sealed record ColouredLine(string Text, string?[] Scopes)
{
    /// <summary>The one scope of a stretch, blanks aside; null when there are several, or none.</summary>
    public string? ScopeOf(int start, int end)
    {
        var scopes = Enumerable.Range(start, end - start).Where(at => !char.IsWhiteSpace(Text[at])).Select(at => Scopes[at]).Distinct(StringComparer.Ordinal).ToList();
        return scopes.Count == 1 ? scopes[0] : null;
    }
}
