using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Superpower.Model;
using Xunit;

namespace ScoreRules.Tests.Documentation.Manual;

/// <summary>The forms of the manual against the parser, both ways: what follows a form is read, and what is read follows its form.</summary>
public sealed class LineFormTests
{
    private const int SentencesOfALine = 60;
    private static readonly LineForms Forms = new();

    [Fact]
    public void All_rules_are_reached_from_the_file_and_all_that_are_mentioned_exist()
    {
        var rules = LanguageManual.Rules();
        var (reached, open) = (new HashSet<string>(StringComparer.Ordinal) { "file" }, new Queue<string>(["file"]));
        while (open.TryDequeue(out var name))
        {
            rules.ShouldContainKey(name);
            foreach (var next in Mentions(rules[name]).Where(reached.Add))
            {
                open.Enqueue(next);
            }
        }

        rules.Keys.Except(reached, StringComparer.Ordinal).ShouldBeEmpty();
    }

    [Fact]
    public void What_follows_a_form_is_read() =>
        Specs().SelectMany(spec => Enumerable.Range(0, SentencesOfALine).Select(number => (spec, Words: Forms.Write(spec, number))))
            .Where(line => !Reads(line.spec, line.Words)).Select(line => $"{line.spec.Starter} {line.Words}").Take(40).ShouldBeEmpty();

    [Fact]
    public void What_is_read_follows_its_form()
    {
        var lines = Texts().SelectMany(text => SyntaxParser.Parse(text).Statements)
            .SelectMany(statement => statement.Lines.Append(statement.First!).Select(line => (line.Spec, Text: statement.Source.Slice(line.Span).ReplaceLineEndings(" "))))
            .ToList();
        lines.Count.ShouldBeGreaterThan(4000);
        lines.Where(line => !Forms.Fits(line.Spec, line.Text)).Select(line => line.Text).ShouldBeEmpty();
    }

    private static IEnumerable<ClauseSpec> Specs() => StatementTable.All.SelectMany(head => head.Lines.Select(use => use.Spec).Prepend(head.FirstLine)).Distinct();

    private static IEnumerable<SourceText> Texts() =>
        Directory.GetFiles(Repository.PathOf("rulesets"), "*.rules", SearchOption.AllDirectories)
            .Append(Repository.PathOf("tests", "ScoreRules.Tests", "Syntax", "coverage.rules")).Order(StringComparer.Ordinal)
            .Select(path => new SourceText(path, File.ReadAllText(path).ReplaceLineEndings("\n")))
            .Concat(LanguageManual.Blocks.Where(block => block.Info.StartsWith("rules", StringComparison.Ordinal)).Select(block => new SourceText("page.rules", block.Text)));

    private static bool Reads(ClauseSpec spec, string rest)
    {
        var (source, findings, tokens) = (new SourceText("line.rules", rest), new DiagnosticBag(), new List<Token<TokenKind>>());
        new LineScanner(source, findings).Scan(new SourceSpan(0, rest.Length), spec.Mode, tokens, ("", null));
        return spec.Parse(new TokenList<TokenKind>([.. tokens]), new SourceSpan(0, rest.Length)) is not null && findings.ToSorted().IsEmpty;
    }

    private static IEnumerable<string> Mentions(Ebnf.EbnfPart part) => part switch
    {
        Ebnf.EbnfPart.Reference reference => [reference.Name],
        Ebnf.EbnfPart.Sequence sequence => sequence.Parts.SelectMany(Mentions),
        Ebnf.EbnfPart.Choice choice => choice.Parts.SelectMany(Mentions),
        Ebnf.EbnfPart.Optional optional => Mentions(optional.Part),
        _ => [],
    };
}
