namespace ScoreRules.Language.Syntax.Tree;

/// <summary>A kind of line as one kind of statement uses it.</summary>
/// <param name="Spec">The kind of line.</param>
/// <param name="Required">Whether the statement cannot do without it.</param>
/// <param name="Once">Whether it may stand only once.</param>
internal sealed record ClauseUse(ClauseSpec Spec, bool Required = false, bool Once = false);
