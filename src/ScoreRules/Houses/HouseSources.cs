using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Houses;

/// <summary>All files of a house, by path, with what could not be read.</summary>
/// <param name="Files">The files.</param>
/// <param name="Findings">Files or stretches that could not be read.</param>
public sealed record HouseSources(ImmutableArray<HouseFile> Files, ImmutableArray<Diagnostic> Findings);
