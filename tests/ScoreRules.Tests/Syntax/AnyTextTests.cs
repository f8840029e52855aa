using CsCheck;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Syntax;

/// <summary>What holds for every text, sound or not.</summary>
public sealed class AnyTextTests
{
    private static readonly Gen<string> Texts = Gen.OneOf(BrokenText.Anything, BrokenText.NearlyAHouse);

    [Fact]
    public void Any_text_ends_in_findings_that_can_be_printed() =>
        Texts.Sample(text => Parse(text).Findings.All(finding => DiagnosticText.Full(finding).Length > 0 && DiagnosticText.Short(finding).Length > 0));

    [Fact]
    public void All_places_lie_inside_the_text() =>
        Texts.Sample(text => Parse(text).Findings.SelectMany(Places).All(span => span.Start >= 0 && span.Length >= 0 && span.End <= text.Length));

    [Fact]
    public void A_statement_covers_its_lines() =>
        Texts.Sample(text => Parse(text).Statements.All(statement => Parts(statement).All(statement.Span.Contains)));

    [Fact]
    public void Statements_do_not_overlap_and_stand_in_order() =>
        Texts.Sample(text =>
        {
            var spans = Parse(text).Statements.Where(statement => Parts(statement).Any()).Select(statement => statement.Span).ToList();
            return spans.Zip(spans.Skip(1)).All(pair => pair.First.End <= pair.Second.Start);
        });

    [Fact]
    public void Findings_stand_in_the_order_of_their_places() =>
        Texts.Sample(text =>
        {
            var places = Parse(text).Findings.Select(finding => finding.Location).ToList();
            return places.Zip(places.Skip(1)).All(pair => SourceLocation.Compare(pair.First, pair.Second) <= 0);
        });

    [Fact]
    public void Line_ends_of_two_characters_change_nothing() =>
        Texts.Select(text => text.ReplaceLineEndings("\n").Replace('\r', ' ')).Sample(text => Told(text.Replace("\n", "\r\n", StringComparison.Ordinal)) == Told(text));

    [Fact]
    public void The_same_text_gives_the_same_findings() => Texts.Sample(text => Told(text) == Told(text));

    /// <summary>A fault leaves the statements before and behind it alone: a blank line parts them.</summary>
    [Fact]
    public void Broken_text_between_blank_lines_does_not_reach_the_statement_below() =>
        BrokenText.Anything.Sample(text =>
        {
            const string Sound = "\n\ncall long-loaded\n  when long tension is at least 3\n";
            var file = Parse(text + Sound);
            var last = file.Statements[^1];
            return last.Spec.Words == "call" && last.IsWhole && last.Lines.Length == 1 && file.Findings.All(finding => finding.Location.Span.End <= text.Length);
        });

    [Fact]
    public void The_shipped_rule_text_parses_without_findings()
    {
        var files = Directory.GetFiles(Repository.PathOf("rulesets"), "*.rules", SearchOption.AllDirectories);
        files.ShouldNotBeEmpty();
        foreach (var file in files)
        {
            Parse(File.ReadAllText(file)).Findings.Select(DiagnosticText.Short).ShouldBeEmpty(file);
        }
    }

    private static FileSyntax Parse(string text) => SyntaxParser.Parse(new SourceText("any.rules", text));

    private static string Told(string text) => string.Join('\n', Parse(text).Findings.Select(DiagnosticText.Full));

    private static IEnumerable<SourceSpan> Places(Diagnostic finding) =>
        finding.Others.Append(finding.Primary).Select(label => label.Location.Span)
            .Concat(finding.Suggestions.Select(suggestion => suggestion.Edit?.Location.Span).OfType<SourceSpan>());

    private static IEnumerable<SourceSpan> Parts(StatementSyntax statement) =>
        statement.Lines.Select(line => line.Span).Concat(statement.Prose.Select(text => text.Span)).Concat(statement.First is null ? [] : [statement.First.Span]);
}
