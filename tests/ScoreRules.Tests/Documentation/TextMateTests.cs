using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation;

/// <summary>The grammar for editors is written from the statement table, and colours every line of the examples as it should.</summary>
public sealed class TextMateTests
{
    private static readonly TextMateReader Reader = new();

    [Fact]
    public void The_grammar_is_that_of_the_statement_table() => Golden.Check(TextMateGrammar.Text, "docs", "editor", "scorerules.tmLanguage.json");

    [Fact]
    public void Every_head_and_every_first_word_of_a_line_is_coloured()
    {
        foreach (var example in LanguagePage.Examples)
        {
            var text = example.Block.Text;
            var scopes = Reader.Read(text);
            foreach (var statement in SyntaxParser.Parse(new SourceText("example.rules", text)).Statements)
            {
                Scope(scopes, statement.First!.Span.Start, statement.Spec.Words.Length).ShouldBe("keyword.control.scorerules", statement.Spec.Words);
                foreach (var line in statement.Lines.Where(line => line.Spec.Starter.Length > 0))
                {
                    Scope(scopes, line.Span.Start, line.Spec.Starter.Length).ShouldBe("keyword.other.scorerules", line.Spec.Starter);
                }
            }
        }
    }

    /// <summary>Names of strings, numbers with their units, notes and prose.</summary>
    [Theory]
    [InlineData("movement \"leg press, feet high\"", "\"leg press, feet high\"", "entity.name.type.scorerules")]
    [InlineData("leave out \"leg press, feet high\"", "\"leg press, feet high\"", "string.quoted.double.scorerules")]
    [InlineData("give 4 points", "4", "constant.numeric.scorerules")]
    [InlineData("give 4 points", "points", "keyword.other.unit.scorerules")]
    [InlineData("x\n  worth 0% at 2.5 kg", "%", "keyword.other.unit.scorerules")]
    [InlineData("x\n  keeps trunk pitch -15°", "-15", "constant.numeric.scorerules")]
    [InlineData("x\n  when grip is one of neutral", "is", "keyword.operator.word.scorerules")]
    [InlineData("x\n  when grip is one of neutral", "one of", "support.constant.scorerules")]
    [InlineData("x\n  because 4 points is enough", "4 points is enough", "comment.line.scorerules")]
    [InlineData("x\n  except for calves because 4 is enough", "4 is enough", "comment.line.scorerules")]
    [InlineData("note give 4 points", "give 4 points", "comment.block.documentation.scorerules")]
    [InlineData("philosophy\n  when we load", "when we load", "comment.block.documentation.scorerules")]
    [InlineData("caution Stop at 4.", "Stop at 4.", "string.unquoted.scorerules")]
    public void A_piece_of_a_line_has_its_scope(string text, string piece, string scope) =>
        Scope(Reader.Read(text), text.IndexOf(piece, StringComparison.Ordinal), piece.Length).ShouldBe(scope);

    [Fact]
    public void No_number_of_the_examples_is_left_without_a_colour_outside_names_and_text()
    {
        foreach (var example in LanguagePage.Examples)
        {
            var source = new SourceText("example.rules", example.Block.Text);
            var scopes = Reader.Read(source.Text);
            foreach (var (span, line) in SyntaxParser.Parse(source).Statements.SelectMany(statement => statement.Lines).OfType<ClauseSyntax<ValueSyntax>>().Select(line => (line.Content.First?.Span ?? default, line)).Where(pair => pair.Item1.Length > 0))
            {
                scopes.Any(scope => scope.Start == span.Start && scope.Scope == "constant.numeric.scorerules").ShouldBeTrue(source.Slice(line.Span));
            }
        }
    }

    // The last scope that covers a piece is the innermost; blanks at the beginning of free text belong to it.
    private static string? Scope(IReadOnlyList<(int Start, int Length, string Scope)> scopes, int start, int length) =>
        scopes.LastOrDefault(scope => scope.Start <= start && start + length <= scope.Start + scope.Length).Scope;
}
