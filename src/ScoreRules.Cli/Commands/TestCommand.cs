using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Guarding;
using ScoreRules.Guarding.Breaking;
using ScoreRules.Guarding.Exercising;
using ScoreRules.Houses;
using ScoreRules.Publishing;
using ScoreRules.Publishing.Guards;

namespace ScoreRules.Cli.Commands;

/// <summary><c>test</c>: holds a house to its own expectations, and asks what they would notice.</summary>
internal static class TestCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var house = CommonOptions.Names("HOUSE", "A folder of rule text; left out, the current folder.", 0, 1);
        var date = CommonOptions.Date();
        var format = CommonOptions.Format("text", "json");
        var junit = new Option<string?>("--junit") { Description = "Also write the result to this file, in the XML form that build servers read.", HelpName = "FILE" };
        var coverage = new Option<bool>("--coverage") { Description = "Also list the rules that no expectation exercises." };
        var breaking = new Option<bool>("--break") { Description = "Also break each rule, weight and border in turn, say which breakages no expectation notices, and suggest expectations that would." };
        var least = LeastNoticed();
        var color = CommonOptions.Color();
        var command = new Command("test", "Tests the expectations of a house; one that fails is shown with both explanations side by side.") { house, date, coverage, breaking, least, format, junit, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var judgement = Judge.Run(HouseFolder.Read(HouseChoice.Of(parsed.GetValue(house))), profile: null, parsed.GetValue(date));
            if (parsed.GetValue(junit) is { } file)
            {
                RuleFiles.Write(file, JunitReport.Print(judgement));
            }

            var isRanked = !judgement.HasErrors && !judgement.Rankings.IsEmpty;
            var wantsBreaking = parsed.GetValue(breaking) || parsed.GetValue(least) is not null;
            var asked = new Asked(
                isRanked && parsed.GetValue(coverage) ? RuleCoverage.Of(judgement) : null,
                isRanked && wantsBreaking ? Break(screen, judgement) : null,
                parsed.GetValue(least))
            { IsInVain = !isRanked && (wantsBreaking || parsed.GetValue(coverage)) };
            return Report(screen, judgement, asked, parsed.GetValue(format)!);
        });
        return command;
    }

    private static Option<int?> LeastNoticed()
    {
        var option = new Option<int?>("--least") { Description = "Break rules as --break does, and end with exit code 1 when less than this percentage is noticed.", HelpName = "PERCENT" };
        option.Validators.Add(result =>
        {
            var typed = result.Tokens.Count == 0 ? "" : result.Tokens[^1].Value;
            if (!int.TryParse(typed, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var percent) || percent > 100)
            {
                result.AddError($"--least takes a whole percentage from 0 to 100, such as 90, not \"{typed}\".");
            }
        });
        return option;
    }

    private static BreakageReport Break(Screen screen, Judgement judgement)
    {
        using var progress = screen.Progress("Breaking rules");
        return new BreakageRun(judgement).Run(progress.Report);
    }

    private static int Report(Screen screen, Judgement judgement, Asked asked, string format)
    {
        if (format == "json")
        {
            screen.Result(JudgementJson.Test(judgement, asked.Rules, asked.Breakages));
        }
        else if (judgement.HasErrors)
        {
            return FindingsPrinter.Stopped(judgement, screen);
        }
        else
        {
            FindingsPrinter.Print(TestRule.Failing(judgement), screen.Message, brief: false);
            screen.Result(new ExpectationText(judgement).Print());
            screen.Result(asked.Rules is { } rules ? "\n" + CoverageText.Print(rules) : "");
            screen.Result(asked.Breakages is { } broken ? "\n" + BreakageText.Print(judgement, broken) : "");
            screen.Result(asked.IsInVain ? "Nothing is ranked yet, so there is nothing to break.\n" : "");
        }

        return TestRule.Passes(judgement) && !asked.TooLittle ? ExitCode.Fine : ExitCode.Findings;
    }

    private sealed record Asked(IReadOnlyList<ExercisedRule>? Rules, BreakageReport? Breakages, int? Least)
    {
        public bool IsInVain { get; init; }

        public bool TooLittle => Least is { } least && Breakages?.Score is { } score && Tiering.Rounding.Compared(score * 100) < least;
    }
}
