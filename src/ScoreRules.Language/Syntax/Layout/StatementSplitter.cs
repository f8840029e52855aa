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
    private readonly StarterFindings starters = new(source, findings);
    private readonly LineReader reader = new(source, findings);
    private readonly List<StatementSyntax> statements = [];
    private StatementBuilder? current;
    private bool open;
    private bool swallowing;
    private string? section;
    private int at;
    private int edgeRunEnd = -1;

    /// <summary>Texts that could not be read and may declare a name, so that nothing should be said about names that stand in them.</summary>
    public List<string> Doubtful { get; } = [];

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
        else if (current is { Spec.IsProse: false } above && GoesOnWith(above, line) && (open || Fits(above, line)))
        {
            ReportEdge(above);
            open = true;
            ReadClause(above, line);
        }
        else
        {
            Close();
            ReadUnknownHead(line);
        }
    }

    private void ReportEdge(StatementBuilder above)
    {
        if (at <= edgeRunEnd)
        {
            return;
        }

        edgeRunEnd = at;
        while (edgeRunEnd + 1 < lines.Length && lines[edgeRunEnd + 1].Kind == LineKind.Edge
            && StarterTables.Heads.Match(source.Text, lines[edgeRunEnd + 1].Content) is null && GoesOnWith(above, lines[edgeRunEnd + 1]))
        {
            edgeRunEnd++;
        }

        if (open)
        {
            layout.ClauseAtEdge(lines, at, edgeRunEnd, above.Called);
        }
        else
        {
            layout.CutOffAtEdge(lines, at, edgeRunEnd, above.Called);
        }
    }

    private bool GoesOnWith(StatementBuilder above, LineView line) =>
        StarterTables.LinesOf(above.Spec).Match(source.Text, line.Content) is not null
        || (open && HasVerb(line) && above.Spec.NamedLine is { } named && reader.Fits(named, line, line.Content.Start));

    // Prose may begin with a clause word; below a blank line only what reads well as a clause is taken for one.
    private bool Fits(StatementBuilder above, LineView line) =>
        StarterTables.LinesOf(above.Spec).Match(source.Text, line.Content) is { } match && reader.Fits(match.Value.Spec, line, match.RestStart);

    private void ReadUnknownHead(LineView line)
    {
        var guess = starters.UnknownHead(lines, ref at);
        swallowing = guess is null;
        if (guess is not null)
        {
            Begin(guess.Meant, line, guess.RestStart, guessed: true);
        }

        if (current?.First is null)
        {
            current = null;
            swallowing = true;
            Doubtful.Add(source.Slice(line.Content));
        }
    }

    private void Begin(HeadSpec spec, LineView line, int restStart, bool guessed = false)
    {
        Close();
        swallowing = false;
        open = true;
        current = new StatementBuilder(spec, source, findings, section);
        current.First = reader.Read(spec.FirstLine, line, restStart, lines, ref at, current, guessed);
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

        if (!open && !IsHead(line))
        {
            layout.CutOff(lines, at, current?.Called);
            if (current is null)
            {
                swallowing = true;
                return;
            }

            current.Damaged = true;
            open = true;
        }

        if (current is { Spec.IsProse: true } && open)
        {
            current.Prose.Add(new TextSyntax(source.Slice(line.Content), line.Content));
        }
        else
        {
            ReadClause(current, line);
        }
    }

    // A head that is set in below a blank line is one slip, not two.
    private bool IsHead(LineView line) =>
        current is not { Spec.IsProse: true } && StarterTables.Heads.Match(source.Text, line.Content) is not null && (current is null || (!GoesOnWith(current, line) && !NamesAFact(current, line)));

    private void ReadClause(StatementBuilder? statement, LineView line)
    {
        if (statement is not null && StarterTables.LinesOf(statement.Spec).Match(source.Text, line.Content) is { } match)
        {
            Add(statement, match.Value, line, match.RestStart, guessed: false);
        }
        else if (StarterTables.Heads.Match(source.Text, line.Content) is { } head && (statement is null || !NamesAFact(statement, line)))
        {
            layout.HeadSetIn(line);
            Begin(head.Value, line, head.RestStart);
        }
        else if (statement!.Spec.NamedLine is { } named && (HasVerb(line) || !starters.IsNear(line, statement.Spec)))
        {
            statement.Add(reader.Read(named, line, line.Content.Start, lines, ref at, statement), named, line);
        }
        else if (starters.UnknownClause(line, statement) is { } guess)
        {
            Add(statement, guess.Meant, line, guess.RestStart, guessed: true);
        }
        else
        {
            statement.Damaged = true;
        }
    }

    private void Add(StatementBuilder statement, ClauseUse use, LineView line, int restStart, bool guessed) =>
        statement.Add(reader.Read(use.Spec, line, restStart, lines, ref at, statement, guessed), use.Spec, line);

    private bool NamesAFact(StatementBuilder statement, LineView line) => statement.Spec.NamedLine is not null && HasVerb(line);

    private bool HasVerb(LineView line) => source.Slice(line.Content).Split(' ').Any(word => word is "is" or "has");

    private void Close()
    {
        if (current is not null)
        {
            statements.Add(current.Build());
            Doubtful.AddRange(current.Doubtful);
        }

        current = null;
        open = false;
    }
}
