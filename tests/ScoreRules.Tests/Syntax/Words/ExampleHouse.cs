using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Binding;
using ScoreRules.Tests.Documentation;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Syntax.Words;

/// <summary>An example of the manual in its house, read but not judged, so that very many variants of it can be tried.</summary>
internal sealed class ExampleHouse(MarkdownBlock example, MarkdownBlock? below)
{
    private const string Path = "house.rules";
    private static readonly FileSyntax Prelude = SyntaxParser.Parse(new SourceText("shared/prelude.rules", Repository.Read("tests", "ScoreRules.Tests", "Documentation", "prelude.rules").ReplaceLineEndings("\n")));
    private readonly FileSyntax[] others = [.. example.Info == "rules alone" ? [] : new[] { Prelude }, .. below is null ? [] : new[] { Base(below) }];

    /// <summary>The example as it stands.</summary>
    public SourceText Text { get; } = Source(example.Text, below is not null);

    /// <summary>What is found in the house with another text in place of the example.</summary>
    public Diagnostic[] Findings(string text)
    {
        var files = others.Append(SyntaxParser.Parse(Source(text, below is not null))).OrderBy(file => file.Source.Path, StringComparer.Ordinal);
        var reader = RulesetReader.From(files, new Surroundings(["Millbrook"], null));
        reader.Bind([]);
        return [.. reader.Findings.ToSorted()];
    }

    /// <summary>Whether another text says what the example says.</summary>
    public bool MeansTheSame(string text) => HouseMeaning.Of(text).SequenceEqual(HouseMeaning.Of(Text.Text), StringComparer.Ordinal);

    /// <summary>Whether another text leads to a finding when movements are judged, beyond those that the example has.</summary>
    public bool IsSeenLater(string text) =>
        new PageExample(example with { Text = text }, below).Codes().Except(new PageExample(example, below).Codes(), StringComparer.Ordinal).Any();

    /// <summary>Whether a tier is cut or named anew there: the tiers of the house below stay as they are then, and no longer fit what is said of them.</summary>
    public bool IsRenaming(WordMutant mutant) =>
        SyntaxParser.Parse(Text).Statements.Any(statement => statement.Spec.Words == "change tiers" && statement.Span.Start <= mutant.Place.Start && mutant.Place.End <= statement.Span.End);

    private static SourceText Source(string text, bool isAbove) => new(Path, text) { Layer = isAbove ? 2 : 1 };

    private static FileSyntax Base(MarkdownBlock block) => SyntaxParser.Parse(new SourceText("base/house.rules", block.Text) { Layer = 1, IsOfBase = true });
}
