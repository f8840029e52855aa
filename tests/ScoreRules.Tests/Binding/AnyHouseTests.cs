using System.Collections.Immutable;
using CsCheck;
using ScoreRules.Houses;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using ScoreRules.Tests.Syntax;
using Xunit;

namespace ScoreRules.Tests.Binding;

/// <summary>What holds for every house, sound or not: it can be bound, and the order of its files does not matter.</summary>
public sealed class AnyHouseTests
{
    private const int Rounds = 60;
    private const int FewRounds = 15;

    private static readonly SourceText[] Vocabulary =
        [.. new[] { "vocabulary.rules", "muscles.rules" }.Select(file => new SourceText($"rulesets/shared/{file}", Repository.Read("rulesets", "shared", file)))];

    [Fact]
    public void Any_text_can_be_bound_and_its_findings_printed() =>
        Gen.OneOf(BrokenText.Anything, BrokenText.NearlyAHouse).Sample(text => Findings([House(text), .. Vocabulary]).All(finding => DiagnosticText.Full(finding).Length > 0), iter: Rounds);

    /// <summary>The whole way, with the shared catalogue: what has no error is ranked, what has one is not.</summary>
    [Fact]
    public void Nearly_a_house_is_judged_to_an_end() =>
        BrokenText.NearlyAHouse.Sample(text =>
        {
            var shared = HouseFolder.Read(Repository.PathOf("rulesets", "shared")).Files;
            var judgement = Judge.Run(new HouseSources([new HouseFile("house/house.rules", text, "", IsSpreadsheet: false), .. shared], []));
            return judgement.HasErrors == judgement.Rankings.IsEmpty;
        }, iter: FewRounds);

    /// <summary>Two houses in one, so that everything is declared twice and each wrong name used twice.</summary>
    [Fact]
    public void The_order_of_the_files_does_not_matter() =>
        Gen.Select(BrokenText.NearlyAHouse, BrokenText.NearlyAHouse).Sample((first, second) =>
        {
            SourceText[] files = [House(first), new SourceText("house/second.rules", second), .. Vocabulary];
            return Told(files) == Told([.. files.Reverse()]);
        }, iter: Rounds);

    private static SourceText House(string text) => new("house/house.rules", text);

    private static ImmutableArray<Diagnostic> Findings(SourceText[] files)
    {
        var reader = RulesetReader.Read(files);
        reader.Bind([]);
        return reader.Findings.ToSorted();
    }

    private static string Told(SourceText[] files) => string.Join('\n', Findings(files).Select(DiagnosticText.Short));
}
