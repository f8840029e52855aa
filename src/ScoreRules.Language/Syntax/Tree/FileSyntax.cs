using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Tree;

/// <summary>A parsed file: its statements and what could not be read in it.</summary>
internal sealed record FileSyntax(SourceText Source, ImmutableArray<StatementSyntax> Statements, ImmutableArray<Diagnostic> Findings);
