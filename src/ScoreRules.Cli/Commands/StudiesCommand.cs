using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Publishing;

namespace ScoreRules.Cli.Commands;

/// <summary><c>studies</c>: what the studies of a house found, and how its principles fare against them.</summary>
internal static class StudiesCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var house = CommonOptions.Names("HOUSE", "A folder of rule text; left out, the current folder.", 0, 1);
        var date = CommonOptions.Date();
        var format = CommonOptions.Format("text", "json");
        var color = CommonOptions.Color();
        var command = new Command("studies", "Holds the principles of a house against its studies, before any of them is weighed.") { house, date, format, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var judgement = Judge.Run(HouseFolder.Read(HouseChoice.Of(parsed.GetValue(house))), profile: null, parsed.GetValue(date));
            if (judgement.HasErrors)
            {
                return FindingsPrinter.Stopped(judgement, screen);
            }

            screen.Result(parsed.GetValue(format) == "json" ? StudiesJson.Print(judgement) : new StudiesText(judgement).Print());
            return ExitCode.Fine;
        });
        return command;
    }
}
