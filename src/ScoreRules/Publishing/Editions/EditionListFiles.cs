namespace ScoreRules.Publishing.Editions;

/// <summary>The pages that list editions, beside their folders.</summary>
public static class EditionListFiles
{
    /// <summary>The web page.</summary>
    public const string Page = "index.html";

    /// <summary>The same as Markdown.</summary>
    public const string Markdown = "index.md";
}
