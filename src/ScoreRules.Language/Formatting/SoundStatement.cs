using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Formatting;

/// <summary>A statement that could be read without any finding, with the lines it takes. Only such statements are laid out anew.</summary>
/// <param name="Statement">The statement.</param>
/// <param name="FirstLine">Its first line, from 1.</param>
/// <param name="LastLine">Its last line, from 1.</param>
internal sealed record SoundStatement(StatementSyntax Statement, int FirstLine, int LastLine)
{
    private const int FewLines = 2;

    /// <summary>The sound statements of a file, in order.</summary>
    public static ImmutableArray<SoundStatement> Of(FileSyntax file)
    {
        var reported = file.Findings.Select(finding => finding.Location.Line).ToHashSet();
        return
        [
            .. file.Statements.Where(statement => statement is { IsWhole: true, First: not null })
                .Select(statement => Locate(file, statement))
                .Where(found => !Enumerable.Range(found.FirstLine, found.LineCount).Any(reported.Contains))
                .OrderBy(found => found.FirstLine),
        ];
    }

    /// <summary>
    /// Whether the author may have meant this statement to stand right under the one above: short statements of one kind
    /// (<c>say</c>, <c>expect</c>) read well as a list.
    /// </summary>
    public bool MayListUnder(SoundStatement above) =>
        FirstLine == above.LastLine + 1 && Statement.Spec == above.Statement.Spec && LineCount <= FewLines && above.LineCount <= FewLines;

    private int LineCount => LastLine - FirstLine + 1;

    private static SoundStatement Locate(FileSyntax file, StatementSyntax statement) =>
        new(statement, file.Source.LineOf(statement.First!.Span.Start), file.Source.LineOf(statement.Span.End));
}
