using System.Text.RegularExpressions;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Binding;

/// <summary>
/// Whatever word of a shipped house is lost, doubled, misspelt or changed over with the next: one message at most, and none
/// only where the house still says the same. Two words changed over may spoil two names of one line. Every slip is tried, over the names of the shared movements without their facts; of a house
/// that builds on another every fourth, and every one with SCORERULES_ALL_SLIPS=1.
/// </summary>
public sealed partial class WordSlipTests
{
    private static readonly SourceText[] Shared =
    [
        .. Sources("shared").Where(source => !source.Path.EndsWith("movements.rules", StringComparison.Ordinal)),
        new("rulesets/shared/movements.rules", string.Join('\n', Kept().Matches(Repository.Read("rulesets", "shared", "movements.rules").ReplaceLineEndings("\n")).Select(line => line.Value))),
    ];

    public static TheoryData<string, string> Files() => [.. Houses().SelectMany(house => Sources(house).Select(source => (house, Path.GetFileName(source.Path)!)))];

    [Theory]
    [MemberData(nameof(Files))]
    public void No_slip_is_silent_and_none_has_an_echo(string house, string file)
    {
        var path = $"rulesets/{house}/{file}";
        var text = Sources(house).Single(source => source.Path == path).Text;
        var others = Shared.Concat(Below(house)).Concat(Sources(house).Where(source => source.Path != path)).ToList();
        var parsed = others.Select(SyntaxParser.Parse).ToList();
        Findings(House(path, text, house), parsed).ShouldBeEmpty();
        var meaning = HouseMeaning.Of(text);
        var slips = WordSlip.In(text).Where((_, i) => i % StepOf(house) == 0).ToList();
        slips.Count.ShouldBeGreaterThan(100);
        slips.AsParallel().AsOrdered().Select(slip => Fault(slip, meaning, House(path, slip.Text, house), parsed)).OfType<string>().ShouldBeEmpty();
    }

    private static string? Fault(WordSlip slip, string[] meaning, SourceText damaged, IEnumerable<FileSyntax> others)
    {
        // A slip in a remark that can be read: names are not touched, so there is nothing to bind anew.
        if (SyntaxParser.Parse(damaged).Findings.IsEmpty && HouseMeaning.Of(slip.Text).SequenceEqual(meaning, StringComparer.Ordinal))
        {
            return null;
        }

        var found = Findings(damaged, others);
        if (found.Length > 1 && !(slip.IsSwap && found.All(finding => finding.Location.Path == damaged.Path && Math.Abs(finding.Location.Line - damaged.LineOf(slip.At)) <= 1)))
        {
            return $"echo: {slip.Told}:\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}";
        }

        var after = found.Length > 0 ? meaning : HouseMeaning.Of(slip.Text);
        return after.SequenceEqual(meaning, StringComparer.Ordinal) ? null : $"silent: {slip.Told}:\n  {string.Join("\n  ", after.Except(meaning, StringComparer.Ordinal))}";
    }

    // A house on another is read with all of the other each time: every fourth slip, unless all are asked for.
    private static int StepOf(string house) => BuildsOnLongreach(house) && Environment.GetEnvironmentVariable("SCORERULES_ALL_SLIPS") != "1" ? 4 : 1;

    private static IEnumerable<SourceText> Below(string house) =>
        BuildsOnLongreach(house) ? Sources("longreach").Select(source => new SourceText(source.Path, source.Text) { Layer = 1, IsOfBase = true }) : [];

    private static bool BuildsOnLongreach(string house) => HouseName.Read(Repository.Read("rulesets", house, "house.rules")) is { BuildsOn: "Longreach" };

    private static SourceText House(string path, string text, string house) => new(path, text) { Layer = house != "shared" && BuildsOnLongreach(house) ? 2 : 1 };

    private static IEnumerable<string> Houses() =>
        Directory.GetDirectories(Repository.PathOf("rulesets")).Select(folder => Path.GetFileName(folder)!).Where(name => name != "shared").Order(StringComparer.Ordinal);

    private static IEnumerable<SourceText> Sources(string folder) =>
        Directory.GetFiles(Repository.PathOf("rulesets", folder), "*.rules").Order(StringComparer.Ordinal)
            .Select(path => House($"rulesets/{folder}/{Path.GetFileName(path)}", File.ReadAllText(path).ReplaceLineEndings("\n"), folder));

    private static Diagnostic[] Findings(SourceText damaged, IEnumerable<FileSyntax> others)
    {
        var reader = RulesetReader.From(others.Append(SyntaxParser.Parse(damaged)).OrderBy(file => file.Source.Path, StringComparer.Ordinal), new Surroundings(["Longreach"], null));
        reader.Bind([]);
        if (!reader.Findings.HasErrors)
        {
            reader.CheckNames();
        }

        return [.. reader.Findings.ToSorted()];
    }

    [GeneratedRegex("^(?:movement .*|  also known as .*|  trains .*|)$", RegexOptions.Multiline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Kept();
}
