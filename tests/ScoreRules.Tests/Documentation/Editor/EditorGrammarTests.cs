using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Documentation.Manual;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation.Editor;

/// <summary>The grammar for editors colours what the parser reads: every first word, name in quotes, number and free text of the manual's examples.</summary>
public sealed class EditorGrammarTests
{
    private static readonly string[] File = ["docs", "editor", "scorerules.tmLanguage.json"];
    private static readonly EditorMatcher Matcher = new(Repository.Read(File));
    private static readonly SourceText Examples = new("page.rules", string.Join('\n', LanguageManual.Blocks.Where(block => block.Info.StartsWith("rules", StringComparison.Ordinal)).Select(block => block.Text)));
    private static readonly IReadOnlyList<ColouredLine> Coloured = Matcher.Colour(Examples.Text);

    [Fact]
    public void It_is_that_of_the_statement_table() => Golden.Check(EditorGrammar.Print(), File);

    [Fact]
    public void Every_head_is_a_keyword() =>
        Statements().Where(statement => Scope(statement.First!.Span.Start, statement.Spec.Words.Length) != "keyword.control.scorerules")
            .Select(statement => Examples.Slice(statement.First!.Span)).ShouldBeEmpty();

    [Fact]
    public void Every_first_word_of_a_line_is_a_keyword() =>
        Lines().Where(line => line.Spec.Starter.Length > 0 && Scope(line.Span.Start, line.Spec.Starter.Length) != "keyword.other.clause.scorerules")
            .Select(line => Examples.Slice(line.Span)).ShouldBeEmpty();

    /// <summary>Names, numbers and texts as the scanner tells them apart.</summary>
    [Theory]
    [InlineData(TokenKind.Number, "constant.numeric.scorerules", "constant.other.date.scorerules")]
    [InlineData(TokenKind.Version, "constant.numeric.scorerules")]
    [InlineData(TokenKind.Percent, "keyword.other.unit.scorerules")]
    [InlineData(TokenKind.Degree, "keyword.other.unit.scorerules")]
    [InlineData(TokenKind.Quoted, "string.quoted.double.scorerules")]
    [InlineData(TokenKind.Is, "keyword.operator.word.scorerules", "keyword.operator.phrase.scorerules")]
    [InlineData(TokenKind.Text, "string.unquoted.scorerules", "comment.line.scorerules", "comment.block.scorerules", "comment.block.documentation.scorerules", "markup.heading.scorerules", "string.unquoted.caution.scorerules")]
    internal void Every_piece_has_its_colour(TokenKind kind, params string[] scopes)
    {
        var tokens = Lines().Concat(Statements().Select(statement => statement.First!)).SelectMany(Tokens).Where(token => token.Kind == kind).ToList();
        tokens.ShouldNotBeEmpty();
        tokens.Where(token => !scopes.Contains(Scope(token.Span.Start, token.Span.Length))).Select(token => $"{Examples.Slice(token.Span)} in line {Examples.LineOf(token.Span.Start)}: {Scope(token.Span.Start, token.Span.Length)}").ShouldBeEmpty();
    }

    [Fact]
    public void Prose_is_coloured_to_its_last_line_and_no_further()
    {
        var lines = Matcher.Colour("philosophy\n  when 4 is more\n  than 3\n\ncriterion steady\n  note is it?\nnote one\n  two\ngive 4 points");
        lines[1].ScopeOf(0, lines[1].Text.Length).ShouldBe("comment.block.documentation.scorerules");
        lines[2].ScopeOf(0, lines[2].Text.Length).ShouldBe("comment.block.documentation.scorerules");
        lines[4].ScopeOf(0, 9).ShouldBe("keyword.control.scorerules");
        lines[4].ScopeOf(10, 16).ShouldBe("entity.name.scorerules");
        lines[5].ScopeOf(7, 13).ShouldBe("comment.line.scorerules");
        lines[7].ScopeOf(0, 5).ShouldBe("comment.block.scorerules");
        lines[8].ScopeOf(0, 4).ShouldBe("keyword.control.scorerules");
        lines[8].ScopeOf(5, 6).ShouldBe("constant.numeric.scorerules");
        lines[8].ScopeOf(7, 13).ShouldBe("keyword.other.unit.scorerules");
    }

    private static System.Collections.Immutable.ImmutableArray<StatementSyntax> Statements() => SyntaxParser.Parse(Examples).Statements;

    private static IEnumerable<ClauseSyntax> Lines() => Statements().SelectMany(statement => statement.Lines);

    private static IEnumerable<ScannedToken> Tokens(ClauseSyntax line)
    {
        var tokens = new List<Superpower.Model.Token<TokenKind>>();
        var rest = SourceSpan.FromBounds(line.Span.Start + line.Spec.Starter.Length, line.Span.End);
        new LineScanner(Examples, new Language.Diagnostics.DiagnosticBag()).Scan(rest, line.Spec.Mode, tokens, ("", null));
        return tokens.Select(token => new ScannedToken(token.Kind, new SourceSpan(token.Span.Position.Absolute, token.Span.Length)));
    }

    private static string? Scope(int start, int length)
    {
        var line = Examples.LineOf(start);
        var at = start - Examples.LineSpan(line).Start;
        return Coloured[line - 1].ScopeOf(at, at + length);
    }
}
