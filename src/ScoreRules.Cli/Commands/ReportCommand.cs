using System.CommandLine;
using ScoreRules.Certainty;
using ScoreRules.Cli.Files;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Report;

namespace ScoreRules.Cli.Commands;

/// <summary><c>report</c>: writes one web page with everything about a judged house.</summary>
internal static class ReportCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var house = CommonOptions.Names("HOUSE", "A folder of rule text; left out, the current folder.", 0, 1);
        var page = new Option<string?>("--out") { Description = "The web page to write, such as house.html; one that is there is replaced.", HelpName = "FILE" };
        var pdf = new Option<string?>("--pdf") { Description = "Print the page to this file as well; needs Chromium.", HelpName = "FILE" };
        var profile = CommonOptions.Profile();
        var date = CommonOptions.Date();
        var despite = new Option<bool>("--despite-errors") { Description = "Rank by what could be read; the page says what is left out of account, and the exit code is 1." };
        var command = new Command("report", "Writes one web page with the rankings, a card and a trail for each movement; it needs no network and works from a file.") { house, page, pdf, profile, date, despite };
        command.SetAction(parsed =>
        {
            var typed = HouseChoice.Of(parsed.GetValue(house));
            if (parsed.GetValue(page) is not { Length: > 0 } file)
            {
                throw new HouseException($"Where to? Type: scorerules report {typed} --out FILE, for example house.html.");
            }

            if (parsed.GetValue(pdf) is { } print && Path.GetFullPath(print) == Path.GetFullPath(file))
            {
                throw new HouseException($"--out and --pdf both name \"{file}\". The page and the print are two files.");
            }

            var judgement = Judge.Run(HouseFolder.Read(typed), new JudgeOptions { Profile = parsed.GetValue(profile), Date = parsed.GetValue(date), DespiteErrors = parsed.GetValue(despite) });
            return Write(screen, judgement, file, parsed.GetValue(pdf));
        });
        return command;
    }

    private static int Write(Screen screen, Judgement judgement, string page, string? pdf)
    {
        if (judgement.Explainer is null)
        {
            return FindingsPrinter.Stopped(judgement, screen);
        }

        TargetChoice.Of(judgement, []);
        WholeFile.Write(page, HouseReport.Render(judgement, slots: null, HouseCertainty.Of(judgement)));
        screen.Result($"{page}\n");
        if (pdf is not null)
        {
            Chromium.Print(page, pdf);
            screen.Result($"{pdf}\n");
        }

        return judgement.HasErrors ? ExitCode.Findings : ExitCode.Fine;
    }
}
