using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Binding;

/// <summary>
/// One slip, at most one message: whatever word of the Longreach house is lost, doubled or misspelt. A fixed sample of all
/// slips is tried; SCORERULES_SLIPS=all tries every one, which takes minutes.
/// </summary>
public sealed class WordSlipTests
{
    private const int Every = 37;
    private static readonly bool All = Environment.GetEnvironmentVariable("SCORERULES_SLIPS") == "all";

    public static TheoryData<string> Files() => ["house.rules", "studies.rules", "expectations.rules", "people-and-judgements.rules"];

    [Theory]
    [MemberData(nameof(Files))]
    public void One_slip_leads_to_at_most_one_message(string file)
    {
        var slips = WordSlip.In(Repository.Read("rulesets", "longreach", file)).Where((_, index) => All || index % Every == 0).ToList();
        slips.ShouldNotBeEmpty();
        var others = Sources("shared").Concat(Sources("longreach").Where(source => !source.Path.EndsWith(file, StringComparison.Ordinal))).ToList();
        var doubled = slips.AsParallel().AsOrdered().Select(slip => (slip.Told, Found: Findings([new SourceText($"rulesets/longreach/{file}", slip.Text), .. others])))
            .Where(result => result.Found.Length > 1).Select(result => $"{result.Told}:\n  {string.Join("\n  ", result.Found)}");
        doubled.ShouldBeEmpty();
    }

    private static IEnumerable<SourceText> Sources(string folder) =>
        Directory.GetFiles(Repository.PathOf("rulesets", folder), "*.rules").Order(StringComparer.Ordinal)
            .Select(path => new SourceText($"rulesets/{folder}/{Path.GetFileName(path)}", File.ReadAllText(path)));

    private static string[] Findings(IEnumerable<SourceText> files)
    {
        var reader = RulesetReader.Read(files);
        reader.Bind([]);
        return [.. reader.Findings.ToSorted().Select(DiagnosticText.Short)];
    }
}
