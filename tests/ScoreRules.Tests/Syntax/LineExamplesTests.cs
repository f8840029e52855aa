using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Advice;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Syntax;

/// <summary>The examples that messages show are sound, and no kind of line that can go wrong lacks one.</summary>
public sealed class LineExamplesTests
{
    private static readonly ClauseSpec[] Specs = [.. StatementTable.Own.SelectMany(head => head.Lines.Select(use => use.Spec).Append(head.FirstLine)).Distinct()];

    [Fact]
    public void Every_example_is_a_sound_line()
    {
        foreach (var spec in Specs.Where(spec => LineExamples.Of(spec) is not null))
        {
            var example = LineExamples.Of(spec)!;
            Reads(spec, example[spec.Starter.Length..]).ShouldBeTrue(example);
        }
    }

    /// <summary>Free text and fixed words cannot go wrong behind their first words; a line that is one name has no form to show.</summary>
    [Fact]
    public void Every_kind_of_line_that_is_more_than_a_name_has_an_example() =>
        Specs.Where(spec => LineExamples.Of(spec) is null && spec.Mode != ScanMode.Text && !Reads(spec, "") && !Reads(spec, " zander")).Select(spec => spec.Starter).ShouldBeEmpty();

    private static bool Reads(ClauseSpec spec, string rest)
    {
        var tokens = new List<Superpower.Model.Token<TokenKind>>();
        new LineScanner(new SourceText("line.rules", rest), new DiagnosticBag()).Scan(new SourceSpan(0, rest.Length), spec.Mode, tokens, ("", null));
        return spec.Parse(new Superpower.Model.TokenList<TokenKind>([.. tokens]), new SourceSpan(0, rest.Length)) is not null;
    }
}
