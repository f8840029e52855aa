using Humanizer;
using ScoreRules.Guarding.Breaking;

namespace ScoreRules.Publishing.Guards;

/// <summary>The breakages of a house for a terminal: how many were noticed, which were not, and the pins that would.</summary>
public static class BreakageText
{
    private const int MostShown = 40;

    /// <summary>The whole text.</summary>
    public static string Print(Judgement judgement, BreakageReport report)
    {
        var block = new TextBlock();
        block.Wrapped(Summary(judgement, report));
        PrintUnnoticed(block, report);
        PrintPins(block, report.Pins);
        return block.ToString();
    }

    /// <summary>How many were noticed, in one line.</summary>
    public static string Summary(Judgement judgement, BreakageReport report)
    {
        var name = judgement.Ruleset.House?.Name ?? "This house";
        var tried = $"{name}: {"breakage".ToQuantity(report.Outcomes.Length)} tried, {NumberText.Count(report.Moved)} moved a tier";
        return report.Score is { } score ? $"{tried}; the expectations noticed {NumberText.Count(report.Noticed)} of those ({BreakageWords.Percent(score)})." : $"{tried}.";
    }

    private static void PrintUnnoticed(TextBlock block, BreakageReport report)
    {
        if (report.Unnoticed.IsEmpty)
        {
            return;
        }

        block.Blank();
        block.Line("No expectation noticed");
        foreach (var outcome in report.Unnoticed.Take(MostShown))
        {
            block.Labelled("  -", $"{BreakageWords.Title(outcome.Breakage)} ({outcome.Breakage.Location})", 4);
            block.Labelled("", $"{Moves(outcome.Moved.Length)}: {BreakageWords.Move(outcome.Moved[0])}", 6);
        }

        if (report.Unnoticed.Length > MostShown)
        {
            block.Line($"  and {NumberText.Count(report.Unnoticed.Length - MostShown)} more; --format json lists all");
        }
    }

    private static string Moves(int count) => count == 1 ? "one placement moves" : $"{NumberText.Count(count)} placements move, the first";

    // Not wrapped: to be copied into a file of the house as they are.
    private static void PrintPins(TextBlock block, PinChoice choice)
    {
        if (choice.Pins.IsEmpty)
        {
            return;
        }

        var fewer = choice.IsSmallest ? "no fewer of this kind would do" : "perhaps fewer would do";
        block.Blank();
        block.Wrapped($"{"expectation".ToQuantity(choice.Pins.Length)} would notice all of them ({fewer}). Keep those that you would defend, and add why:");
        block.Blank();
        foreach (var pin in choice.Pins)
        {
            block.Line(BreakageWords.Pin(pin));
        }
    }
}
