using System.Collections.Immutable;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>Names that a statement leaves alone, with the reason.</summary>
internal sealed record ExceptionSyntax(ImmutableArray<NameSyntax> Names, TextSyntax? Because);
