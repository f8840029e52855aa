using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Mending;

/// <summary>
/// The text of a real house, to be damaged, over the shared words and muscles; of movements only the benchmarks, so that
/// thousands of variants can be read.
/// </summary>
internal static class MutantHouse
{
    public const string Path = "house.rules";

    private static readonly SourceText[] Around =
    [
        new("shared/vocabulary.rules", Repository.Read("rulesets", "shared", "vocabulary.rules")),
        new("shared/muscles.rules", Repository.Read("rulesets", "shared", "muscles.rules")),
        new("shared/movements.rules", string.Join("\n\n", Benchmarks(Repository.Read("rulesets", "longreach", "house.rules")))),
    ];

    public static string Text { get; } = Repository.Read("rulesets", "longreach", "house.rules");

    /// <summary>All that reading finds, without judging.</summary>
    public static Diagnostic[] Findings(string text)
    {
        var reader = RulesetReader.Read([new SourceText(Path, text), .. Around]);
        CatalogueBuilder.Build(reader.Bind([]), reader.Findings);
        return [.. reader.Findings.ToSorted()];
    }

    private static IEnumerable<string> Benchmarks(string house)
    {
        var lines = house.Split('\n').Select(line => line.Trim()).ToList();
        var pairs = new List<(string Target, string Benchmark)>();
        foreach (var (line, number) in lines.Select((line, number) => (line, number)).Where(pair => pair.line.StartsWith("benchmark ", StringComparison.Ordinal)))
        {
            pairs.Add((lines[lines.FindLastIndex(number, above => above.StartsWith("target ", StringComparison.Ordinal))]["target ".Length..], line["benchmark ".Length..]));
        }

        return pairs.GroupBy(pair => pair.Benchmark, pair => pair.Target).Select(group => $"movement {group.Key}\n  trains {string.Join(", ", group)}");
    }
}
