using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Tree;

/// <summary>A parsed file: its statements and what could not be read in it.</summary>
/// <param name="Source">The text.</param>
/// <param name="Statements">Its statements.</param>
/// <param name="Findings">What could not be read.</param>
/// <param name="Doubtful">Texts that could not be read and may declare a name.</param>
internal sealed record FileSyntax(SourceText Source, ImmutableArray<StatementSyntax> Statements, ImmutableArray<Diagnostic> Findings, ImmutableArray<DoubtfulText> Doubtful);
