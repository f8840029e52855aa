using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Documentation;

/// <summary>A sound statement of the language page, or the change or drop that is made of one, to be spoilt.</summary>
/// <param name="Text">The statement.</param>
internal sealed record TriedStatement(string Text)
{
    /// <summary>The statement as parsed.</summary>
    public StatementSyntax Syntax { get; } = SyntaxParser.Parse(new SourceText("tried.rules", Text)).Statements[0];

    /// <summary>All statements of the page, and every change and drop of what they declare.</summary>
    public static IReadOnlyList<TriedStatement> All { get; } = [.. Own().Concat(Amending()).DistinctBy(tried => tried.Text, StringComparer.Ordinal)];

    /// <summary>What is found in a text.</summary>
    public static IReadOnlyList<Diagnostic> Findings(string text) => SyntaxParser.Parse(new SourceText("tried.rules", text)).Findings;

    /// <summary>The statement without one of its lines.</summary>
    public string Without(ClauseSyntax line) => Text.Remove(line.Span.Start, line.Span.Length).Replace("\n  \n", "\n", StringComparison.Ordinal).TrimEnd();

    /// <summary>The statement with one of its lines twice.</summary>
    public string Twice(ClauseSyntax line) => $"{Text[..line.Span.End]}\n  {Text[line.Span.Start..]}";

    /// <summary>The statement with a first word of a line that does not exist.</summary>
    public string Misnamed(ClauseSyntax line) => Text.Remove(line.Span.Start, line.Spec.Starter.Length).Insert(line.Span.Start, "plover");

    private static IEnumerable<TriedStatement> Own() => LanguagePage.Examples.SelectMany(example =>
    {
        var source = new SourceText("page.rules", example.Block.Text);
        return SyntaxParser.Parse(source).Statements.Where(statement => !statement.Spec.IsProse && statement.Spec != HouseGrammar.Section).Select(statement => new TriedStatement(source.Slice(statement.Span)));
    });

    private static IEnumerable<TriedStatement> Amending()
    {
        foreach (var head in OverlayGrammar.All.Where(head => OverlayGrammar.KindOf(head)!.Of != RuleGrammar.Caution))
        {
            var kind = OverlayGrammar.KindOf(head)!;
            var under = Own().First(tried => kind.Of is { } of ? tried.Syntax.Spec == of : tried.Syntax.Spec == RuleGrammar.Give && tried.Syntax.Has(Uniform.Named));
            var first = kind.IsDrop && under.Syntax.First is ClauseSyntax<SaySyntax> say ? $" {say.Content.Word.Text}" : kind.Of is null ? $" {under.Syntax.Find(Uniform.Named)!.Content.Text}" : under.Text.Split('\n')[0][kind.Of.Words.Length..];
            var lines = kind.IsDrop ? "\n  because it is another house" : kind.Of is null ? "\n  points 2 points" : string.Concat(under.Text.Split('\n').Skip(1).Select(line => "\n" + line));
            var text = head.Words + first + lines;
            if (Findings(text).Count == 0)
            {
                yield return new TriedStatement(text);
            }
        }
    }
}
