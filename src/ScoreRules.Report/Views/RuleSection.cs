using System.Collections.Immutable;

namespace ScoreRules.Report.Views;

/// <summary>One section of a house: what its authors say there, and the rules under it.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Prose">The authors' paragraphs.</param>
/// <param name="Rules">The rules.</param>
public sealed record RuleSection(string Title, ImmutableArray<string> Prose, ImmutableArray<RuleEntry> Rules);
