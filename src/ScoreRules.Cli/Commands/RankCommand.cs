using System.CommandLine;
using ScoreRules.Certainty;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;
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
        var despite = new Option<bool>("--despite-errors") { Description = "Rank by what could be read; says what is left out of account, and ends with exit code 1." };
        var format = CommonOptions.Format("text", "json", "markdown", "csv");
        var quick = CommonOptions.Quick();
        var color = CommonOptions.Color();
        var command = new Command("rank", "Ranks the movements of a house, each placement with its reasons.") { house, target, profile, date, despite, format, quick, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var typed = HouseChoice.Of(parsed.GetValue(house));
            return Rank(screen, Judge.Run(HouseFolder.Read(typed), new JudgeOptions { Profile = parsed.GetValue(profile), Date = parsed.GetValue(date), DespiteErrors = parsed.GetValue(despite) }), parsed.GetValue(target) ?? [], parsed.GetValue(format)!, parsed.GetValue(quick));
        });
        return command;
    }

    private static int Rank(Screen screen, Judgement judgement, string[] targets, string format, bool quick)
    {
        if (judgement.Explainer is null)
        {
            return FindingsPrinter.Stopped(judgement, screen);
        }

        var rankings = TargetChoice.Of(judgement, targets);
        FindingsPrinter.Print([.. judgement.Findings.Where(finding => finding.Severity != Severity.Error)], screen.Message, brief: false);
        var certainty = quick || format is "markdown" or "csv" ? null : HouseCertainty.Of(judgement);
        screen.Result(format switch
        {
            "json" => JudgementJson.Rank(judgement, rankings, certainty),
            "markdown" => new RankingMarkdown(judgement).Print(rankings),
            "csv" => new RankingCsv(judgement).Print(rankings),
            _ => new RankingText(judgement, certainty).Print(rankings),
        });
        return judgement.HasErrors ? ExitCode.Findings : ExitCode.Fine;
    }
}
