using CsCheck;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Formatting;

/// <summary>What formatting never does, for rule text that was disarranged at random and for text damaged at random.</summary>
public sealed class FormattingPropertyTests
{
    private static readonly string[] Scraps = [" ", "  ", "\n", "\r\n", "\n\n", "\t", ",", "\"", "%", "°", " degrees", " 1 part ", "is", " and ", "because ", "note ", "\nsay ", "\n  when ", "-", "2,5", "\u00a0", "’", "\uFEFF"];

    private static readonly string[] Blocks = [.. Texts().SelectMany(text => text.Split("\n\n")).Where(block => block.Length is > 0 and < 1500)];

    private static readonly Gen<string> SomeBlocks = Gen.OneOf(Blocks).Array[1, 5].Select(blocks => string.Join("\n\n", blocks));

    private static readonly Gen<string> Damaged =
        Gen.Select(SomeBlocks, Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 6], Gen.OneOf(Scraps)).Array[0, 4], (text, cuts) => cuts.Aggregate(text, Cut));

    [Fact]
    public void Formatting_twice_is_formatting_once() =>
        Damaged.Sample(text => Formatted.Text(Formatted.Text(text)).ShouldBe(Formatted.Text(text)), iter: 1500);

    [Fact]
    public void Formatted_text_has_the_same_tree_and_the_same_findings() =>
        Damaged.Sample(text => TreeText.Of(Formatted.Text(text)).ShouldBe(TreeText.Of(text)), iter: 1500);

    [Fact]
    public void Disarranged_text_is_laid_out_as_the_original() =>
        Gen.Select(SomeBlocks, Gen.Int[0, 1_000_000]).Sample((text, seed) => Formatted.Text(Disarrange(text, seed)).ShouldBe(Formatted.Text(text)), iter: 1000);

    private static IEnumerable<string> Texts() => Directory.GetFiles(Repository.PathOf("rulesets"), "*.rules", SearchOption.AllDirectories)
        .Append(Repository.PathOf("tests", "ScoreRules.Tests", "Syntax", "coverage.rules")).Order(StringComparer.Ordinal).Select(File.ReadAllText);

    private static string Cut(string text, (int At, int Length, string Scrap) cut)
    {
        var at = cut.At % (text.Length + 1);
        return text[..at] + cut.Scrap + text[Math.Min(text.Length, at + cut.Length)..];
    }

    // Only what carries no meaning: how far lines are set in, blanks at their ends, line ends, more blank lines between statements, capital heads.
    private static string Disarrange(string text, int seed)
    {
        var lines = text.Split('\n').Select((line, number) => Shifted(line, (seed / (number + 1)) + number));
        return string.Join(seed % 2 == 0 ? "\r\n" : "\n", lines);
    }

    private static string Shifted(string line, int seed)
    {
        if (line.Length == 0)
        {
            return new string('\n', seed % 3) + new string(' ', seed % 2);
        }

        var inner = line[0] == ' ';
        var word = line.TrimStart().Split(' ')[0];
        var head = inner || seed % 5 != 0 ? word : word.ToUpperInvariant();
        return (inner ? new string(seed % 2 == 0 ? ' ' : '\t', 1 + (seed % 7)) : "") + head + line.TrimStart()[word.Length..] + new string(' ', seed % 4);
    }
}
