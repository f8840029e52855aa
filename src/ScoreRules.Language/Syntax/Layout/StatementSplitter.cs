using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>
/// Walks the lines of a file. A statement is an edge line with the inner lines below it; a blank line ends it. Each line
/// is parsed by itself, so a fault in one line leaves the others alone.
/// </summary>
internal sealed class StatementSplitter
{
    private readonly SourceText source;
    private readonly DiagnosticBag findings;
    private readonly LineView[] lines;
    private readonly LayoutFindings layout;
    private readonly StarterFindings starters;
    private readonly LineReader reader;
    private readonly LineFit fit;
    private readonly ReplacedHead replaced;
    private readonly List<StatementSyntax> statements = [];
    private StatementBuilder? current;
    private bool open;
    private bool swallowing;
    private string? section;
    private int at;
    private int edgeRunEnd = -1;

    /// <summary>Prepares to walk a text.</summary>
    public StatementSplitter(SourceText source, DiagnosticBag findings)
    {
        this.source = source;
        this.findings = findings;
        lines = LineView.Of(source);
        layout = new LayoutFindings(source, findings);
        starters = new StarterFindings(source, findings);
        reader = new LineReader(source, findings);
        fit = new LineFit(source, lines);
        replaced = new ReplacedHead(source, lines, fit);
    }

    /// <summary>Texts that could not be read and may declare a name, so that nothing should be said about names that stand in them.</summary>
    public List<DoubtfulText> Doubtful { get; } = [];

    /// <summary>The statements of the file.</summary>
    public List<StatementSyntax> Split()
    {
        for (at = 0; at < lines.Length; at++)
        {
            switch (lines[at].Kind)
            {
                case LineKind.Blank:
                    open = swallowing = false;
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
            if (replaced.Meant(match.Value, at, match.RestStart) is { Count: > 0 } meant)
            {
                Close();
                starters.ReplacedHead(line, match.Value, meant);
                Doubtful.Add(new DoubtfulText("", source.Slice(line.Content)));
                swallowing = true;
                return;
            }

            Begin(match.Value, line, match.RestStart);
        }
        else if (current is { Spec.IsProse: false } above && (open ? fit.GoesOn(above.Spec, line) : fit.Rejoins(above, line) && fit.NextGoOn(above, at)))
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
        while (edgeRunEnd + 1 < lines.Length && lines[edgeRunEnd + 1].Kind == LineKind.Edge && !fit.IsHead(lines[edgeRunEnd + 1]) && fit.GoesOn(above.Spec, lines[edgeRunEnd + 1]))
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

    private void ReadUnknownHead(LineView line)
    {
        var guess = starters.UnknownHead(lines, ref at);
        swallowing = guess is null;
        if (guess is not null)
        {
            Begin(guess.Meant, line, guess.RestStart, guessed: true);
        }

        Doubtful.Add(new DoubtfulText("", source.Slice(line.Content)));
        if (current?.First is null)
        {
            current = null;
            swallowing = true;
        }
    }

    private void Begin(HeadSpec spec, LineView line, int restStart, bool guessed = false)
    {
        Close();
        swallowing = false;
        open = true;
        current = new StatementBuilder(spec, source, findings, section);
        current.First = reader.Read(spec.FirstLine, line, restStart, lines, ref at, current, guessed);
        current.IsDoubtful = current.First is null && fit.IsChangedOver(spec, line, restStart);
        if (spec == Grammar.HouseGrammar.Section && current.First is ClauseSyntax<TextSyntax> heading)
        {
            section = heading.Content.Text;
        }
    }

    private void ReadInnerLine(LineView line)
    {
        if (swallowing)
        {
            Doubtful.Add(new DoubtfulText("", source.Slice(line.Content)));
            return;
        }

        if (open || Reopen(line))
        {
            if (current!.Spec.IsProse)
            {
                current.Prose.Add(new TextSyntax(source.Slice(line.Content), line.Content));
            }
            else
            {
                ReadClause(current, line);
            }
        }
    }

    // An inner line below a blank line: the statement above goes on, a new one begins set in, or nothing fits.
    private bool Reopen(LineView line)
    {
        if (current is { } above && (above.Spec.IsProse ? starters.IsProse(lines, at) : fit.Rejoins(above, line)))
        {
            layout.CutOff(lines, at, above.Called);
            above.Damaged = true;
            return open = true;
        }

        if (StarterTables.Heads.Match(source.Text, line.Content) is { } head)
        {
            layout.HeadSetIn(line);
            Begin(head.Value, line, head.RestStart, guessed: true);
            current!.IsDoubtful = true;
            return false;
        }

        starters.Orphans(lines, at, current?.Called);
        Doubtful.Add(new DoubtfulText("", source.Slice(line.Content)));
        swallowing = true;
        return false;
    }

    private void ReadClause(StatementBuilder statement, LineView line)
    {
        if (StarterTables.LinesOf(statement.Spec).Match(source.Text, line.Content) is { } match)
        {
            Add(statement, match.Value, line, match.RestStart, statement.IsDoubtful);
        }
        else if (StarterTables.Heads.Match(source.Text, line.Content) is { } head && fit.BeginsStatement(statement.Spec, head.Value, head.RestStart, at))
        {
            layout.HeadSetIn(line);
            statement.MayLack = true;
            Begin(head.Value, line, head.RestStart);
        }
        else if (statement.Spec.NamedLine is { } named && (fit.HasVerb(line) || !starters.IsNear(line, statement.Spec)))
        {
            statement.Add(reader.Read(named, line, line.Content.Start, lines, ref at, statement, statement.IsDoubtful), named, line);
        }
        else if (starters.UnknownClause(line, statement) is { } guess)
        {
            Add(statement, guess.Meant, line, guess.RestStart, guessed: true);
        }
        else
        {
            statement.Damaged = true;
            statement.Doubt(null, source.Slice(line.Content));
            at = fit.LastOfContinued(at);
        }
    }

    private void Add(StatementBuilder statement, ClauseUse use, LineView line, int restStart, bool guessed) =>
        statement.Add(reader.Read(use.Spec, line, restStart, lines, ref at, statement, guessed), use.Spec, line);

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
