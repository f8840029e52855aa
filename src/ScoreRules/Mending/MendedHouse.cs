using System.Collections.Immutable;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Mending;

/// <summary>A house after its safe edits were made; nothing is written to disk yet.</summary>
/// <param name="Changed">The files with new texts, by path.</param>
/// <param name="Edits">All edits, in the order made.</param>
/// <param name="Findings">What is still found.</param>
/// <param name="Elsewhere">Safe edits that are left because they lie in files that may not be changed.</param>
public sealed record MendedHouse(ImmutableArray<HouseFile> Changed, ImmutableArray<MadeEdit> Edits, ImmutableArray<Diagnostic> Findings, int Elsewhere);
