using System.CommandLine;
using ScoreRules.Catalogue;
using ScoreRules.Certainty;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Publishing;
using ScoreRules.Tiering;

namespace ScoreRules.Cli.Commands;

/// <summary><c>explain</c>: everything behind one movement's placements.</summary>
internal static class ExplainCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var names = CommonOptions.Names("HOUSE MOVEMENT", "A folder of rule text (left out, the current folder) and the name of a movement.", 1, 2);
        var target = CommonOptions.Target();
        var profile = CommonOptions.Profile();
        var date = CommonOptions.Date();
        var format = CommonOptions.Format("text", "json");
        var quick = CommonOptions.Quick();
        var color = CommonOptions.Color();
        var command = new Command("explain", "Explains one movement: cautions, verdict, reasons, and the whole trail.") { names, target, profile, date, format, quick, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var typed = parsed.GetValue(names)!;
            var judgement = Judge.Run(HouseFolder.Read(MovementChoice.House(typed, "explain")), parsed.GetValue(profile), parsed.GetValue(date));
            return judgement.HasErrors
                ? FindingsPrinter.Stopped(judgement, screen)
                : Explain(screen, judgement, MovementChoice.Find(judgement, typed[^1]), parsed.GetValue(target) ?? [], parsed.GetValue(format)!, parsed.GetValue(quick));
        });
        return command;
    }

    private static int Explain(Screen screen, Judgement judgement, Movement movement, string[] targets, string format, bool quick)
    {
        var rankings = TargetChoice.Of(judgement, targets).Where(ranking => judgement.Explainer!.Explain(ranking, movement) is not null).ToList();
        if (rankings.Count == 0)
        {
            screen.Error($"\"{movement.Name}\" is not ranked there. It trains {string.Join(", ", movement.Trains.Select(target => target.Name))}.");
            return ExitCode.Misuse;
        }

        var certainty = quick ? null : HouseCertainty.Of(judgement);
        screen.Result(format == "json" ? JudgementJson.Explain(judgement, movement, rankings, certainty) : Text(judgement, movement, rankings, certainty));
        return ExitCode.Fine;
    }

    private static string Text(Judgement judgement, Movement movement, List<TargetRanking> rankings, HouseCertainty? certainty)
    {
        var printer = new ExplanationText(judgement, certainty);
        return string.Join("\n", rankings.Select(ranking => printer.Print(judgement.Explainer!.Explain(ranking, movement)!)));
    }
}
