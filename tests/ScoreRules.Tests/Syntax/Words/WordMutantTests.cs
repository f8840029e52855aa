using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Binding;
using ScoreRules.Tests.Documentation.Manual;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Syntax.Words;

/// <summary>
/// Every line of every kind of statement, as the manual's examples have it, with each of its words, numbers and signs deleted,
/// made nonsense, or taken for the first word of another line. Either it still means the same, or one message says so in the damaged line.
/// </summary>
public sealed class WordMutantTests
{
    // These say that something is missing in a statement, so they stand at its first line.
    private static readonly string[] AtTheHead = ["SR1007", "SR1015", "SR1021"];

    public static TheoryData<int> Examples() => [.. Enumerable.Range(0, LanguageManual.Examples.Count)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_word_can_be_lost_unseen_and_no_message_is_generic(int index)
    {
        var (example, below) = LanguageManual.Examples[index];
        var house = new ExampleHouse(example, below);
        var known = house.Findings(house.Text.Text).Select(finding => finding.Code + finding.Headline).ToHashSet();
        var meaning = HouseMeaning.Of(house.Text.Text);
        var faults = WordMutant.Of(house.Text).ToList().AsParallel().AsOrdered()
            .Select(mutant => Fault(mutant, house, [.. house.Findings(mutant.Text).Where(finding => !known.Contains(finding.Code + finding.Headline))], meaning))
            .OfType<string>().ToList();
        faults.ShouldBeEmpty();
    }

    private static string? Fault(WordMutant mutant, ExampleHouse house, Diagnostic[] found, string[] meaning)
    {
        if (found.Length == 0)
        {
            return mutant.IsFree || mutant.Told.Contains(" for ", StringComparison.Ordinal) && !mutant.Told.Contains("plover", StringComparison.Ordinal) || HouseMeaning.Of(mutant.Text).SequenceEqual(meaning, StringComparer.Ordinal)
                ? null : $"silent: {mutant.Told}";
        }

        var line = house.Text.LineOf(mutant.Place.Start);
        var first = found[0];
        return found.Count(finding => finding.Severity == Severity.Error) > 1 ? $"echo: {mutant.Told}\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}"
            : !mutant.IsFree && first.Location.Line != line && !AtTheHead.Contains(first.Code) ? $"elsewhere: {mutant.Told}: {DiagnosticText.Short(first)}"
            : IsGeneric(first) ? $"generic: {mutant.Told}: {DiagnosticText.Short(first)}"
            : null;
    }

    /// <summary>Generic is what names nothing that could stand there: no way out at all, or only the end of the line.</summary>
    private static bool IsGeneric(Diagnostic finding) =>
        finding.Suggestions.IsEmpty && finding.Notes.IsEmpty
        || finding.Suggestions.Any(suggestion => suggestion.Advice is "here the line could go on with the end of the line" or "go on with the end of the line");
}
