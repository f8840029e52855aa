using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>A warning that its author accepted.</summary>
/// <param name="Finding">The warning.</param>
/// <param name="By">The line that accepts it.</param>
public sealed record AcceptedFinding(Diagnostic Finding, AcceptedWarning By);
