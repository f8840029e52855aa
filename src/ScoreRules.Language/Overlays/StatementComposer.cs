using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Composes a statement of lines of several files and reads it again, so that those who bind it see one statement like any other.</summary>
/// <param name="under">The statement that it takes the place of.</param>
internal sealed class StatementComposer(StatementSyntax under)
{
    private readonly TextComposer text = new(under.Source);

    /// <summary>Copies a stretch of a statement.</summary>
    public void Copy(StatementSyntax from, SourceSpan span) => text.Copy(from.Source, span);

    /// <summary>Writes words in place of a stretch of a statement.</summary>
    public void Write(string words, StatementSyntax from, SourceSpan standsFor) => text.Write(words, from.Source, standsFor);

    /// <summary>Adds a part as a line of its own.</summary>
    public void Line(StatementSyntax from, LinePart part, string prefix = "")
    {
        BeginLine(from, part);
        text.Write(prefix + part.Prefix, from.Source, part.Clause.Span with { Length = 0 });
        text.Copy(from.Source, part.Span);
    }

    /// <summary>Begins a line that stands for a part.</summary>
    public void BeginLine(StatementSyntax from, LinePart part) => text.NewLine(from.Source, part.Clause.Span);

    /// <summary>The composed statement.</summary>
    /// <param name="isWhole">Whether every line it was made of could be read.</param>
    /// <param name="findings">Where findings go about lines that do not go together.</param>
    public StatementSyntax ToStatement(bool isWhole, DiagnosticBag? findings = null)
    {
        var file = SyntaxParser.ParseComposed(text.ToText());
        if (isWhole)
        {
            // A line that was guessed at is guessed at again, and so are signs that only look like others; that has been reported.
            findings?.AddRange(file.Findings.Where(finding => !finding.Code.StartsWith("SR0", StringComparison.Ordinal) && !findings.HasAt(finding.Location)));
        }

        return file.Statements[0] with { Section = under.Section, IsWhole = isWhole && file.Findings.IsEmpty };
    }
}
