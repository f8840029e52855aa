namespace ScoreRules.Language.Diagnostics;

/// <summary>A way out of a finding: advice in words and, where there is one, an edit.</summary>
/// <param name="Advice">What to do, as a sentence or a question, without a full stop where an edit follows.</param>
/// <param name="Edit">The edit, or null for advice alone.</param>
/// <param name="Safety">Whether the edit may be applied without asking.</param>
public sealed record Suggestion(string Advice, TextEdit? Edit = null, EditSafety Safety = EditSafety.Shown);
