using System.Globalization;
using System.Text.RegularExpressions;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Cases;

/// <summary>A case: prose, a block of rule text, a block with all messages it leads to.</summary>
internal sealed partial class CaseFile
{
    private static readonly string Folder = Repository.PathOf("tests", "ScoreRules.Tests", "Cases");
    private static readonly HouseFile Vocabulary = new("shared/vocabulary.rules", File.ReadAllText(Path.Combine(Folder, "vocabulary.rules")), "", IsSpreadsheet: false);

    public CaseFile(string name) => Markdown = File.ReadAllText(Path.Combine(Folder, name)).ReplaceLineEndings("\n");

    public static IEnumerable<string> Names => Directory.GetFiles(Folder, "*.md").Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal);

    public string Markdown { get; }

    public string Rules => MarkdownBlocks.In(Markdown).Single(block => block.Info == "rules").Text;

    /// <summary>How many faults the prose says were planted; null when it does not say.</summary>
    public int? Planted => PlantedFaults().Match(Markdown) is { Success: true } stated ? int.Parse(stated.Groups["count"].Value, CultureInfo.InvariantCulture) : null;

    /// <summary>What is found in rule text that may use the vocabulary of the cases.</summary>
    public static Diagnostic[] Findings(string rules) =>
        [.. Judge.Run(new HouseSources([new HouseFile("house.rules", rules, "", IsSpreadsheet: false), Vocabulary], [])).Findings];

    public static string Printed(IEnumerable<Diagnostic> findings) => string.Join("\n\n", findings.Select(DiagnosticText.Full));

    [GeneratedRegex("^Planted faults: (?<count>[0-9]+)[.]", RegexOptions.Multiline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PlantedFaults();
}
