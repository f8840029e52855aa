using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Comparing;
using ScoreRules.Houses;
using ScoreRules.Publishing;
using ScoreRules.Publishing.Editions;

namespace ScoreRules.Cli.Commands;

/// <summary><c>compare</c>: what differs between two houses, or two editions of one, and which rules did it.</summary>
internal static class CompareCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var houses = CommonOptions.Names("HOUSES", "Two folders of rule text, the old one first.", 2, 2);
        var target = CommonOptions.Target();
        var date = CommonOptions.Date();
        var exit = new Option<bool>("--exit-code") { Description = "End with exit code 1 when anything differs." };
        var format = CommonOptions.Format("text", "json");
        var color = CommonOptions.Color();
        var command = new Command("compare", "Compares two houses or editions: cautions, what moved, and the rules behind each move.") { houses, target, date, exit, format, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var typed = parsed.GetValue(houses)!;
            RefuseOneFolder(typed);
            var (old, now) = (Judged(typed[0], parsed.GetValue(date)), Judged(typed[1], parsed.GetValue(date)));
            return old.HasErrors || now.HasErrors
                ? Stopped(screen, old, now)
                : Report(screen, old, now, new Wanted(parsed.GetValue(target) ?? [], parsed.GetValue(format)!, parsed.GetValue(exit)));
        });
        return command;
    }

    private static void RefuseOneFolder(string[] typed)
    {
        if (HouseFolder.AreOne(typed[0], typed[1]))
        {
            throw new HouseException($"\"{typed[0]}\" and \"{typed[1]}\" are one folder. Name two: the old edition and the new one, or two houses.");
        }
    }

    private static Judgement Judged(string typed, DateOnly? date)
    {
        var judgement = Judge.Run(HouseFolder.Read(typed), profile: null, date);
        return judgement.HasErrors || !judgement.Rankings.IsEmpty
            ? judgement
            : throw new HouseException($"\"{typed}\" ranks nothing, so there is nothing to compare: it needs \"tiers\", at least one \"target\" and at least one \"criterion\".");
    }

    private static int Stopped(Screen screen, Judgement old, Judgement now)
    {
        foreach (var judgement in new[] { old, now }.Where(judgement => judgement.HasErrors))
        {
            FindingsPrinter.Stopped(judgement, screen);
        }

        return ExitCode.Findings;
    }

    private static int Report(Screen screen, Judgement old, Judgement now, Wanted wanted)
    {
        var chosen = wanted.Targets.Length == 0 ? [] : TargetChoice.Of(now, wanted.Targets).Select(ranking => ranking.Target.Name).ToHashSet(StringComparer.Ordinal);
        var comparison = Compare(screen, old, now);
        var targets = comparison.Targets.Where(target => chosen.Count == 0 || chosen.Contains(target.New.Target.Name)).ToList();
        screen.Result(wanted.Format == "json" ? JudgementJson.Compare(comparison, targets) : new CompareText(comparison).Print(targets));
        return wanted.ExitCode && !comparison.IsEmpty ? ExitCode.Findings : ExitCode.Fine;
    }

    private static HouseComparison Compare(Screen screen, Judgement old, Judgement now)
    {
        using var progress = screen.Progress("Swapping blocks of rules");
        return HouseComparer.Compare(old, now, progress.Report);
    }

    private sealed record Wanted(string[] Targets, string Format, bool ExitCode);
}
