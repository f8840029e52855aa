using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Something that was read and checked but has no effect yet; listed, never silent.</summary>
/// <param name="What">The kind of statement or line, such as "study" or "movement: keeps".</param>
/// <param name="Count">How often it stands.</param>
/// <param name="First">The first place.</param>
public sealed record NotYetApplied(string What, int Count, SourceLocation First);
