using System.CommandLine;
using Humanizer;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Mending;

namespace ScoreRules.Cli.Commands;

/// <summary><c>fix</c>: makes the edits that have one sensible meaning.</summary>
internal static class FixCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var house = CommonOptions.Names("HOUSE|FILE", "A folder of rule text, or one file of it; left out, the current folder.", 0, 1);
        var dryRun = new Option<bool>("--dry-run") { Description = "Only say what would be changed." };
        var command = new Command("fix", "Mends what has one sensible meaning: the safe edits of errors and warnings, until none is left.") { house, dryRun };
        command.SetAction(parsed =>
        {
            var typed = HouseChoice.Of(parsed.GetValue(house));
            return Fix(screen, typed, parsed.GetValue(dryRun));
        });
        return command;
    }

    private static int Fix(Screen screen, string typed, bool dryRun)
    {
        var sources = HouseFolder.Read(typed);
        var own = HouseFolder.OwnFiles(typed).Select(Path.GetFullPath).ToHashSet(StringComparer.Ordinal);
        var mended = Mender.Mend(sources, path => own.Contains(Path.GetFullPath(path)));
        if (!dryRun)
        {
            Write(sources, mended);
        }

        foreach (var edit in mended.Edits)
        {
            screen.Result($"{edit.Path}:{edit.Line}: {edit.Headline}: {edit.Advice.TrimEnd('.')}\n");
        }

        Report(screen, mended, dryRun);
        return mended.Findings.Any(finding => finding.Severity == Severity.Error) ? ExitCode.Findings : ExitCode.Fine;
    }

    private static void Write(HouseSources sources, MendedHouse mended)
    {
        // Read once more before anything is written: never write over what an editor has saved in the meantime.
        foreach (var file in mended.Changed)
        {
            var judged = sources.Files.First(before => before.Path == file.Path);
            if (RuleFiles.Read(file.Path) != judged.Text)
            {
                throw new HouseException($"\"{file.Path}\" was changed by someone else just now, so it is left as it is. Run the command again.");
            }
        }

        foreach (var file in mended.Changed)
        {
            RuleFiles.Replace(file.Path, file.Text);
        }
    }

    private static void Report(Screen screen, MendedHouse mended, bool dryRun)
    {
        var what = mended.Edits.IsEmpty ? "Nothing to change" : $"{"edit".ToQuantity(mended.Edits.Length)} in {"file".ToQuantity(mended.Changed.Length)}{(dryRun ? ", not made" : "")}";
        screen.Error($"{what}; {(dryRun ? "after that" : "now")} {FindingsPrinter.Count(mended.Findings)}{(mended.Findings.IsEmpty ? "" : ", which scorerules check shows")}.");
        if (mended.Elsewhere > 0)
        {
            screen.Error($"{"safe edit".ToQuantity(mended.Elsewhere)} left in other files, such as those of the shared folder: name that folder to make {(mended.Elsewhere == 1 ? "it" : "them")}.");
        }
    }
}
