using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Publishing;

namespace ScoreRules.Cli.Commands;

/// <summary><c>rank</c>: judges a house and prints its rankings.</summary>
internal static class RankCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var house = CommonOptions.Names("HOUSE", "A folder of rule text; left out, the current folder.", 0, 1);
        var target = CommonOptions.Target();
        var profile = CommonOptions.Profile();
        var date = CommonOptions.Date();
        var format = CommonOptions.Format("text", "json");
        var color = CommonOptions.Color();
        var command = new Command("rank", "Ranks the movements of a house, each placement with its reasons.") { house, target, profile, date, format, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var typed = parsed.GetValue(house) is { Length: > 0 } named ? named[0] : HouseChoice.Current();
            return Rank(screen, Judge.Run(HouseFolder.Read(typed), parsed.GetValue(profile), parsed.GetValue(date)), parsed.GetValue(target) ?? [], parsed.GetValue(format)!);
        });
        return command;
    }

    private static int Rank(Screen screen, Judgement judgement, string[] targets, string format)
    {
        if (judgement.HasErrors)
        {
            return FindingsPrinter.Stopped(judgement, screen);
        }

        var rankings = TargetChoice.Of(judgement, targets);
        FindingsPrinter.Print(judgement.Findings, screen.Message, brief: false);
        screen.Result(format == "json" ? JudgementJson.Rank(judgement, rankings) : new RankingText(judgement).Print(rankings));
        return ExitCode.Fine;
    }
}
