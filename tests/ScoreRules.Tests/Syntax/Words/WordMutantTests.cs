using ScoreRules.Language.Diagnostics;
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
    // These say that something is missing in a statement, or where a damaged word is used, so they stand in another line.
    private static readonly string[] InAnotherLine = ["SR1007", "SR1015", "SR1021", "SR6006"];

    public static TheoryData<int> Examples() => [.. Enumerable.Range(0, LanguageManual.Examples.Count)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_word_can_be_lost_unseen_and_no_message_is_generic(int index)
    {
        var (example, below) = LanguageManual.Examples[index];
        var house = new ExampleHouse(example, below);
        var known = house.Findings(house.Text.Text).Select(finding => finding.Code + finding.Headline).ToHashSet();
        WordMutant.Of(house.Text).ToList().AsParallel().AsOrdered()
            .Select(mutant => Fault(mutant, house, [.. house.Findings(mutant.Text).Where(finding => !known.Contains(finding.Code + finding.Headline))]))
            .OfType<string>().ToList().ShouldBeEmpty();
    }

    private static string? Fault(WordMutant mutant, ExampleHouse house, Diagnostic[] found)
    {
        if (found.Length == 0)
        {
            return mutant.IsFree || mutant.IsOtherLine || house.MeansTheSame(mutant.Text) || IsSound(mutant) || IsKnownGap(mutant, house) || house.IsSeenLater(mutant.Text) ? null : $"silent: {mutant.Told}";
        }

        // A line of another kind is two faults or more: it stands where it does not belong, and the line that it was is missing.
        return !mutant.IsOtherLine && !house.IsRenaming(mutant) && found.Count(finding => finding.Severity == Severity.Error) > 1 ? $"echo: {mutant.Told}\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}"
            : !mutant.IsFree && !mutant.IsOtherLine && !StandsThere(mutant, house, found[0]) ? $"elsewhere: {mutant.Told}: {DiagnosticText.Short(found[0])}"
            : IsGeneric(found[0]) ? $"generic: {mutant.Told}: {DiagnosticText.Short(found[0])}"
            : null;
    }

    // A gap: "change say a touch means 1", without its unit, is passed over when houses are put together.
    private static bool IsKnownGap(WordMutant mutant, ExampleHouse house) => house.Text.Slice(house.Text.LineSpan(house.Text.LineOf(mutant.Place.Start))).StartsWith("change say ", StringComparison.Ordinal);

    // Sentences with another meaning that an author may as well want: a share or a number of movements, a word in points or in points and more.
    // The first of two angles may go without its sign, and posture that replaces nothing without "but".
    private static bool IsSound(WordMutant mutant) => Array.Exists(["%", "within", "but", "°"], word => mutant.Told.EndsWith($" without \"{word}\"", StringComparison.Ordinal));

    // A line whose only word is gone is blank, so the message stands in the line that is left alone by it.
    private static bool StandsThere(WordMutant mutant, ExampleHouse house, Diagnostic finding)
    {
        var line = house.Text.LineOf(mutant.Place.Start);
        return finding.Location.Line == line || InAnotherLine.Contains(finding.Code, StringComparer.Ordinal) || mutant.Text.Split('\n')[line - 1].Trim().Length == 0;
    }

    /// <summary>Generic is what names nothing that could stand there: no way out, no list of words, or only the end of the line.</summary>
    private static bool IsGeneric(Diagnostic finding) =>
        (finding.Suggestions.IsEmpty && finding.Notes.IsEmpty && !finding.Others.Any(label => label.Text.StartsWith("one of: ", StringComparison.Ordinal)))
        || finding.Suggestions.Any(suggestion => suggestion.Advice.EndsWith(" with the end of the line", StringComparison.Ordinal));
}
