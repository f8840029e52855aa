using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>A change or drop with what it is about.</summary>
/// <param name="Amending">The change or drop.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Things">The statements it is about; one or more.</param>
internal sealed record Resolved(StatementSyntax Amending, OverlayKind Kind, ImmutableArray<StatementSyntax> Things);
