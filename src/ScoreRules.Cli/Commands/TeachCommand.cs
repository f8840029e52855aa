using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Publishing.Lessons;
using ScoreRules.Report;
using ScoreRules.Teaching;
using ScoreRules.Tiering;

namespace ScoreRules.Cli.Commands;

/// <summary><c>teach</c>: one ranking in an order in which it can be told in a lesson.</summary>
internal static class TeachCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var names = CommonOptions.Names("HOUSE TARGET", "A folder of rule text (left out, the current folder) and the name of a target.", 1, 2);
        var date = CommonOptions.Date();
        var file = new Option<string?>("--out") { Description = "Write to this file; left out, to the screen.", HelpName = "FILE" };
        var format = CommonOptions.Format("markdown", "html", "slides");
        var command = new Command("teach", "Arranges one ranking for a lesson: the benchmark first, then each movement beside the one most like it, told by what differs.") { names, date, file, format };
        command.SetAction(parsed =>
        {
            var typed = parsed.GetValue(names)!;
            var judgement = Judge.Run(HouseFolder.Read(House(typed)), profile: null, parsed.GetValue(date));
            return judgement.HasErrors
                ? FindingsPrinter.Stopped(judgement, screen)
                : Teach(screen, judgement, TargetChoice.Of(judgement, [typed[^1]])[0], parsed.GetValue(format)!, parsed.GetValue(file));
        });
        return command;
    }

    private static int Teach(Screen screen, Judgement judgement, TargetRanking ranking, string format, string? file)
    {
        if (ranking.Placements.IsEmpty && ranking.Benchmark is null)
        {
            throw new HouseException($"Nothing is ranked for \"{ranking.Target.Name}\", so there is nothing to tell.");
        }

        var lesson = Lesson.Of(judgement, ranking);
        var text = format switch
        {
            "html" => LessonReport.Page(judgement, lesson),
            "slides" => LessonReport.Slides(judgement, lesson),
            _ => new LessonMarkdown(judgement, lesson).Print(),
        };
        if (file is null)
        {
            screen.Result(text);
            return ExitCode.Fine;
        }

        WholeFile.Write(file, text);
        screen.Result($"{file}\n");
        return ExitCode.Fine;
    }

    private static string House(string[] typed) => typed.Length == 2 ? typed[0]
        : Directory.Exists(typed[0]) ? throw new HouseException($"Which target? Type: scorerules teach {typed[0]} TARGET.")
        : HouseChoice.Current();
}
