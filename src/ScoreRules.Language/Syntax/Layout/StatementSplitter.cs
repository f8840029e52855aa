using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>
/// Walks the lines of a file. A statement is an edge line with the inner lines below it; a blank line ends it. Each line
/// is parsed by itself, so a fault in one line leaves the others alone.
/// </summary>
internal sealed class StatementSplitter(SourceText source, DiagnosticBag findings)
{
    private readonly LineView[] lines = LineView.Of(source);
    private readonly LayoutFindings layout = new(source, findings);
    private readonly LineReader reader = new(source, findings);
    private readonly List<StatementSyntax> statements = [];
    private StatementBuilder? current;
    private bool open;
    private bool swallowing;
    private string? section;
    private int at;

    /// <summary>The statements of the file.</summary>
    public List<StatementSyntax> Split()
    {
        for (at = 0; at < lines.Length; at++)
        {
            switch (lines[at].Kind)
            {
                case LineKind.Blank:
                    open = false;
                    break;
                case LineKind.Edge:
                    ReadEdgeLine(lines[at]);
                    break;
                default:
                    ReadInnerLine(lines[at]);
                    break;
            }
        }

        Close();
        return statements;
    }

    private void ReadEdgeLine(LineView line)
    {
        if (StarterTables.Heads.Match(source.Text, line.Content) is { } match)
        {
            Begin(match.Value, line, match.RestStart);
        }
        else if (open && current is { } above && !above.Spec.IsProse && StarterTables.LinesOf(above.Spec).Match(source.Text, line.Content) is not null)
        {
            layout.ClauseAtEdge(line, above.Title);
            ReadClause(above, line);
        }
        else
        {
            Close();
            layout.UnknownHead(lines, ref at);
            swallowing = true;
        }
    }

    private void Begin(HeadSpec spec, LineView line, int restStart)
    {
        Close();
        swallowing = false;
        open = true;
        current = new StatementBuilder(spec, source, findings, section);
        current.First = reader.Read(spec, spec.FirstLine, line, restStart, lines, ref at, current);
        if (spec == Grammar.HouseGrammar.Section && current.First is ClauseSyntax<TextSyntax> heading)
        {
            section = heading.Content.Text;
        }
    }

    private void ReadInnerLine(LineView line)
    {
        if (swallowing)
        {
            return;
        }

        if (!open)
        {
            layout.CutOff(lines, at, current?.Title);
            if (current is null)
            {
                swallowing = true;
                return;
            }

            current.Damaged = true;
            open = true;
        }

        if (current!.Spec.IsProse)
        {
            current.Prose.Add(new TextSyntax(source.Slice(line.Content), line.Content));
            return;
        }

        ReadClause(current, line);
    }

    private void ReadClause(StatementBuilder statement, LineView line)
    {
        if (StarterTables.LinesOf(statement.Spec).Match(source.Text, line.Content) is { } match)
        {
            statement.Add(reader.Read(statement.Spec, match.Value.Spec, line, match.RestStart, lines, ref at, statement), match.Value.Spec, line);
        }
        else if (StarterTables.Heads.Match(source.Text, line.Content) is { } head && !NamesAFact(statement, line))
        {
            layout.HeadSetIn(line);
            Begin(head.Value, line, head.RestStart);
        }
        else if (statement.Spec.NamedLine is { } named)
        {
            statement.Add(reader.Read(statement.Spec, named, line, line.Content.Start, lines, ref at, statement), named, line);
        }
        else
        {
            statement.Damaged = true;
            layout.UnknownClause(line, statement);
        }
    }

    private bool NamesAFact(StatementBuilder statement, LineView line) =>
        statement.Spec.NamedLine is not null && source.Slice(line.Content).Split(' ').Any(word => word is "is" or "has");

    private void Close()
    {
        if (current is not null)
        {
            statements.Add(current.Build());
        }

        current = null;
        open = false;
    }
}
