using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Guarding;
using ScoreRules.Houses;
using ScoreRules.Publishing;

namespace ScoreRules.Cli.Commands;

/// <summary><c>test</c>: holds a house to its own expectations.</summary>
internal static class TestCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var house = CommonOptions.Names("HOUSE", "A folder of rule text; left out, the current folder.", 0, 1);
        var date = CommonOptions.Date();
        var format = CommonOptions.Format("text", "json");
        var junit = new Option<string?>("--junit") { Description = "Also write the result to this file, in the XML form that build servers read.", HelpName = "FILE" };
        var color = CommonOptions.Color();
        var command = new Command("test", "Tests the expectations of a house; one that fails is shown with both explanations side by side.") { house, date, format, junit, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var judgement = Judge.Run(HouseFolder.Read(HouseChoice.Of(parsed.GetValue(house))), profile: null, parsed.GetValue(date));
            if (parsed.GetValue(junit) is { } file)
            {
                RuleFiles.Write(file, JunitReport.Print(judgement));
            }

            return Report(screen, judgement, parsed.GetValue(format)!);
        });
        return command;
    }

    private static int Report(Screen screen, Judgement judgement, string format)
    {
        if (format == "json")
        {
            screen.Result(JudgementJson.Test(judgement));
        }
        else if (judgement.HasErrors)
        {
            return FindingsPrinter.Stopped(judgement, screen);
        }
        else
        {
            FindingsPrinter.Print(TestRule.Failing(judgement), screen.Message, brief: false);
            screen.Result(new ExpectationText(judgement).Print());
        }

        return TestRule.Passes(judgement) ? ExitCode.Fine : ExitCode.Findings;
    }
}
