using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Layout;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>
/// Texts that end in a whole line of their statement: <c>because it is steady we think so</c>. When a line break is lost, a
/// text swallows what stood below it, and what it swallowed has no effect.
/// </summary>
internal sealed class SwallowedLines(BindContext context)
{
    private static readonly ClauseSpec[] Texts = [Uniform.Because, Uniform.Source, Uniform.Note];

    /// <summary>Reports such texts.</summary>
    public void Report(IEnumerable<StatementSyntax> statements)
    {
        foreach (var statement in statements.Where(statement => statement.First is not null))
        {
            foreach (var line in statement.Lines.Where(line => Texts.Contains(line.Spec)).Cast<ClauseSyntax<TextSyntax>>())
            {
                Report(line, statement);
            }
        }
    }

    private void Report(ClauseSyntax<TextSyntax> line, StatementSyntax statement)
    {
        var text = line.Content.Span;
        for (var at = text.Start; at < text.End; at++)
        {
            var begins = at > text.Start && statement.Source.Text[at - 1] == ' ' && statement.Source.Text[at] != ' ';
            if (begins && Swallowed(SourceSpan.FromBounds(at, text.End), statement) is { } starter)
            {
                Add(starter, SourceSpan.FromBounds(at, text.End), line, statement);
                return;
            }
        }
    }

    // What the rest of the text says if it is read as a line of its own; null when it is just text.
    private string? Swallowed(SourceSpan rest, StatementSyntax statement)
    {
        if (StarterTables.LinesOf(statement.Spec).Match(statement.Source.Text, rest) is not { Value.Spec: { } spec } found || spec.Mode == ScanMode.Text || spec.Starter.Length == 0)
        {
            return null;
        }

        var line = new LineView(statement.Source.LineOf(rest.Start), rest, LineKind.Inner);
        var at = 0;
        var silent = new DiagnosticBag();
        var clause = new LineReader(statement.Source, silent).Read(spec, line, found.RestStart, [line], ref at, new StatementBuilder(statement.Spec, statement.Source, silent, null));
        return clause is not null && !silent.HasErrors && IsMeant(clause) ? spec.Starter : null;
    }

    // "because it shines when the grip is free" and "a newcomer starts beside its cousin" are English; "when stretch is at least 3" is a condition.
    private bool IsMeant(ClauseSyntax clause) => clause switch
    {
        ClauseSyntax<ConditionLineSyntax> condition => condition.Content.Atoms.All(atom => context.Knows(atom.Subject)),
        ClauseSyntax<NameSyntax> named => context.Knows(named.Content),
        ClauseSyntax<NameSyntax[]> list => list.Content.All(context.Knows),
        ClauseSyntax<ExceptionSyntax> exception => exception.Content.Names.All(context.Knows),
        _ => true,
    };

    private void Add(string starter, SourceSpan rest, ClauseSyntax<TextSyntax> line, StatementSyntax statement) =>
        context.Report("SR0010", Severity.Warning, $"This text ends in a line of its own: \"{starter}\"", statement, rest, "has no effect inside a text", [],
            new Suggestion("break the line before it, if it is meant as a line", new TextEdit(statement.At(new SourceSpan(rest.Start, 0)), "\n  ")),
            new Suggestion($"reword the end of \"{line.Spec.Starter}\", if it is only text"));
}
