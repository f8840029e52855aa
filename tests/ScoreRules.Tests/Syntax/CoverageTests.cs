using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Syntax;

/// <summary>The 64 things that a coach must be able to say, each with an example (<c>coverage.rules</c>).</summary>
public sealed class CoverageTests
{
    private static readonly SourceText Source = new("coverage.rules", Repository.Read("tests", "ScoreRules.Tests", "Syntax", "coverage.rules"));

    [Fact]
    public void All_64_examples_parse()
    {
        var file = SyntaxParser.Parse(Source);
        file.Findings.Select(DiagnosticText.Short).ShouldBeEmpty();
        file.Statements.Count(statement => statement.Spec == HouseGrammar.Section).ShouldBe(64);
    }

    [Fact]
    public void Every_kind_of_statement_that_is_not_new_since_has_an_example()
    {
        var used = SyntaxParser.Parse(Source).Statements.Select(statement => statement.Spec.Words).ToHashSet();
        var later = new[] { "muscle", "refuse", "philosophy" };
        StatementTable.Own.Select(head => head.Words).Where(words => !used.Contains(words) && !later.Contains(words) && !words.StartsWith("ask ", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    /// <summary>No step of the parse asks what a word means: with every bare name made nonsense, the tree keeps its shape.</summary>
    [Fact]
    public void The_parse_never_needs_the_vocabulary()
    {
        var shape = Shape(Source);
        var nonsense = new SourceText("nonsense.rules", Nonsense(Source));
        Shape(nonsense).Zip(shape).Where(pair => pair.First != pair.Second).ShouldBeEmpty();
        Shape(nonsense).Count.ShouldBe(shape.Count);
    }

    private static List<string> Shape(SourceText source) =>
        [.. SyntaxParser.Parse(source).Statements.Select(statement => $"{statement.Spec.Words}: {string.Join(", ", statement.Lines.Select(line => line.Spec.Starter))}")];

    // Letters of every bare name become z.
    private static string Nonsense(SourceText source)
    {
        var text = source.Text.ToCharArray();
        foreach (var name in Names.In(SyntaxParser.Parse(source)))
        {
            for (var i = name.Start; i < name.End; i++)
            {
                text[i] = char.IsLetter(text[i]) ? 'z' : text[i];
            }
        }

        return new string(text);
    }
}
