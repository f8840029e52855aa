using System.Text;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Layout;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Formatting;

/// <summary>Prints sound statements line by line. Lines are kept as the author broke them.</summary>
internal sealed class StatementPrinter(SourceText source, StringBuilder text)
{
    private const int Inner = 2;
    private const int Deeper = 2;
    private readonly LineView[] lines = LineView.Of(source);
    private readonly LinePrinter printer = new(source, text);

    /// <summary>Appends all lines of a statement.</summary>
    public void Print(SoundStatement sound)
    {
        var statement = sound.Statement;
        var starts = statement.Lines.Prepend(statement.First!).ToDictionary(clause => source.LineOf(clause.Span.Start));
        var depth = 0;
        for (var number = sound.FirstLine; number <= sound.LastLine; number++)
        {
            if (starts.TryGetValue(number, out var clause))
            {
                depth = number == sound.FirstLine ? 0 : DepthOf(clause, depth);
                PrintClause(statement, clause, lines[number - 1], depth);
            }
            else
            {
                PrintFollowing(statement, lines[number - 1], depth);
            }

            text.Append('\n');
        }
    }

    // In a recipe a condition belongs to the step above it, not to the whole statement.
    private static int DepthOf(ClauseSyntax clause, int above) =>
        clause.Spec == RuleGrammar.StepWhen || (clause.Spec == Reach.And && above > Inner) ? Inner + Deeper : Inner;

    private void PrintClause(StatementSyntax statement, ClauseSyntax clause, LineView line, int depth)
    {
        text.Append(' ', depth).Append(clause.Spec.Starter);
        var rest = clause.Spec.Starter.Length == 0 ? line.Content.Start : RestStart(statement, clause, line);
        printer.Append(SourceSpan.FromBounds(rest, line.Content.End), clause.Spec.Mode);
    }

    private int RestStart(StatementSyntax statement, ClauseSyntax clause, LineView line) => ReferenceEquals(clause, statement.First)
        ? StarterTables.Heads.Match(source.Text, line.Content)!.Value.RestStart
        : StarterTables.LinesOf(statement.Spec).Match(source.Text, line.Content)!.Value.RestStart;

    private void PrintFollowing(StatementSyntax statement, LineView line, int depth)
    {
        if (statement.Spec.IsProse)
        {
            text.Append(' ', Inner).Append(source.Slice(line.Content));
            return;
        }

        text.Append(' ', Math.Max(depth, Inner) + Deeper);
        printer.Append(line.Content, ScanMode.Tokens);
    }
}
