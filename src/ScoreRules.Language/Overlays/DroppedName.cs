using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>A name that a house took away.</summary>
/// <param name="House">The house.</param>
/// <param name="Place">Where it says so.</param>
/// <param name="NewName">What the thing is called now; null when it is gone.</param>
internal sealed record DroppedName(string House, SourceLocation Place, string? NewName);
