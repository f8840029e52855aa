namespace ScoreRules.Language.Syntax.Tree;

/// <summary>What a line of fixed words says besides those words: nothing.</summary>
internal readonly record struct NoContent;
