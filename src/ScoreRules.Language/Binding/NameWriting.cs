using ScoreRules.Language.Syntax;

namespace ScoreRules.Language.Binding;

/// <summary>How names are written in rule text.</summary>
public static class NameWriting
{
    /// <summary>A name as it must be written: in double quotes where it holds something that a bare name cannot.</summary>
    public static string Written(string name) => NameQuotes.Of(name);
}
