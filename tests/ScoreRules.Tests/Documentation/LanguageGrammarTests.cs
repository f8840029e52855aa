using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation;

/// <summary>
/// The grammar of <c>docs/language.md</c> is the program's: its statements are written from the table, each line has a rule,
/// sentences made from the rules can be read, and all lines that are shipped are sentences of the rules.
/// </summary>
public sealed class LanguageGrammarTests
{
    private const int SentencesForEachRule = 60;
    private static readonly IReadOnlyDictionary<string, EbnfNode> Rules = Ebnf.Read(LanguagePage.Blocks.Single(block => block.Info == "ebnf lines").Text);

    private static readonly Dictionary<string, ClauseSpec> Lines = StatementTable.All.SelectMany(head => head.Lines).Select(use => use.Spec).Distinct()
        .GroupBy(LanguageGrammar.LineRule, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);

    private static readonly string[] Heads = [.. StatementTable.All.Select(LanguageGrammar.HeadRule).Distinct(StringComparer.Ordinal)];

    public static TheoryData<string> LineRules() => [.. Lines.Keys];

    public static TheoryData<string> HeadRules() => [.. Heads];

    public static TheoryData<string> Files() =>
        [.. Directory.GetFiles(Repository.PathOf("rulesets"), "*.rules", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    [Fact]
    public void The_statements_are_those_of_the_table() =>
        Golden.Check(MarkdownBlocks.Replace(LanguagePage.Text, "ebnf statements", LanguageGrammar.Statements().TrimEnd('\n')), LanguagePage.File);

    [Fact]
    public void Each_line_has_a_rule_and_each_rule_is_used()
    {
        Rules.Keys.Where(name => name.EndsWith("-line", StringComparison.Ordinal) || name.EndsWith("-head", StringComparison.Ordinal)).ShouldBe(Lines.Keys.Concat(Heads), ignoreOrder: true);
        var used = Rules.Values.SelectMany(References).Concat(Lines.Keys).Concat(Heads).ToHashSet(StringComparer.Ordinal);
        Rules.Keys.Where(name => !used.Contains(name)).ShouldBeEmpty();
        Rules.Values.SelectMany(References).Where(name => !Rules.ContainsKey(name)).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(LineRules))]
    public void What_the_rule_of_a_line_makes_can_be_read(string rule)
    {
        var spec = Lines[rule];
        foreach (var sentence in Sentences(rule))
        {
            Reads(spec, sentence[spec.Starter.Length..]).ShouldBeTrue(sentence);
        }
    }

    [Theory]
    [MemberData(nameof(HeadRules))]
    public void What_the_rule_of_a_first_line_makes_can_be_read(string rule)
    {
        foreach (var sentence in Sentences(rule))
        {
            var found = SyntaxParser.Parse(new SourceText("sentence.rules", sentence));
            found.Findings.Where(finding => finding.Code is not ("SR1006" or "SR1007" or "SR1015")).Select(DiagnosticText.Full).ShouldBeEmpty(sentence);
            found.Statements.Single().First.ShouldNotBeNull(sentence);
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void All_lines_that_are_shipped_are_sentences_of_the_rules(string file) => Misfits(Repository.Read(file.Split('/'))).ShouldBeEmpty();

    [Fact]
    public void All_lines_of_the_examples_are_sentences_of_the_rules()
    {
        LanguagePage.Examples.SelectMany(example => Misfits(example.Block.Text + "\n\n" + example.Below)).Concat(Misfits(LanguagePage.House)).ShouldBeEmpty();
        Misfits(Repository.Read("tests", "ScoreRules.Tests", "Syntax", "coverage.rules")).ShouldBeEmpty();
    }

    private static IEnumerable<string> Sentences(string rule)
    {
        var sentences = new EbnfSentences(Rules, seed: 20310504);
        return Enumerable.Range(0, SentencesForEachRule).Select(_ => sentences.Make(Rules[rule]).Trim());
    }

    private static bool Reads(ClauseSpec spec, string rest)
    {
        var tokens = new List<Superpower.Model.Token<TokenKind>>();
        var source = new SourceText("sentence.rules", rest);
        new LineScanner(source, new DiagnosticBag()).Scan(new SourceSpan(0, rest.Length), spec.Mode, tokens, ("", null));
        return spec.Parse(new Superpower.Model.TokenList<TokenKind>([.. tokens]), new SourceSpan(0, rest.Length)) is not null;
    }

    private static IEnumerable<string> Misfits(string text)
    {
        var source = new SourceText("shipped.rules", text.ReplaceLineEndings("\n"));
        foreach (var statement in SyntaxParser.Parse(source).Statements)
        {
            var lines = statement.Lines.Select(line => (LanguageGrammar.LineRule(line.Spec), line)).Prepend((LanguageGrammar.HeadRule(statement.Spec), statement.First!));
            foreach (var (rule, line) in lines.Where(pair => !Fits(source, pair.Item1, pair.Item2)))
            {
                yield return $"{rule}: {source.Slice(line.Span)}";
            }
        }
    }

    // The starter is part of the rule, but free text may begin right behind it: so both are read for themselves.
    private static bool Fits(SourceText source, string rule, ClauseSyntax line)
    {
        var reader = new TokenReader(source);
        var starter = line.Spec.StarterWords.Aggregate(line.Span.Start, (at, word) => source.Text.IndexOf(word, at, StringComparison.OrdinalIgnoreCase) + word.Length);
        var tokens = reader.Read(SourceSpan.FromBounds(line.Span.Start, starter), ScanMode.Tokens).ToList();
        for (var (at, mode) = (starter, line.Spec.Mode); at < line.Span.End; mode = ScanMode.Tokens)
        {
            var end = source.Text.IndexOf('\n', at, line.Span.End - at);
            end = end < 0 ? line.Span.End : end;
            tokens.AddRange(reader.Read(SourceSpan.FromBounds(at, end), mode));
            at = end + 1;
        }

        return new EbnfMatcher(Rules, source.Text, tokens).Fits(Rules[rule]);
    }

    private static IEnumerable<string> References(EbnfNode node) => node switch
    {
        EbnfReference reference => [reference.Name],
        EbnfOptional optional => References(optional.Inner),
        EbnfRepeated repeated => References(repeated.Inner),
        EbnfSequence sequence => sequence.Parts.SelectMany(References),
        EbnfChoice choice => choice.Parts.SelectMany(References),
        _ => [],
    };
}
