using System.CommandLine;
using Humanizer;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Publishing;

namespace ScoreRules.Cli.Commands;

/// <summary><c>check</c>: reads houses and says what is wrong, where, and what would mend it.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var houses = CommonOptions.Names("HOUSE", "Folders of rule text, or - for standard input; left out, the current folder.", 0, 1000);
        var date = CommonOptions.Date();
        var format = CommonOptions.Format("text", "short", "json");
        var color = CommonOptions.Color();
        var strict = new Option<bool>("--warnings-as-errors") { Description = "Warnings count as errors." };
        var command = new Command("check", "Checks rule text: what is wrong, where, and what would mend it.") { houses, date, format, color, strict };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var typed = parsed.GetValue(houses) is { Length: > 0 } named ? named : [HouseChoice.Current()];
            var judged = typed.Select(house => Judge.Run(house == "-" ? StandardInput.Read(screen.ReadInput()) : HouseFolder.Read(house), profile: null, parsed.GetValue(date))).ToList();
            return Report(screen, judged, parsed.GetValue(format)!, parsed.GetValue(strict));
        });
        return command;
    }

    private static int Report(Screen screen, List<Judgement> judged, string format, bool strict)
    {
        var findings = DiagnosticBag.Sort(judged.SelectMany(judgement => judgement.Findings));
        if (format == "json")
        {
            screen.Result(JudgementJson.Check(findings, [.. judged.Select(judgement => judgement.Ruleset)]));
        }
        else
        {
            FindingsPrinter.Print(findings, text => screen.Result(text + "\n"), format == "short");
            screen.Result(FindingsPrinter.Count(findings) + ".\n");
            PrintRest(screen, judged, format);
        }

        var least = strict ? Severity.Warning : Severity.Error;
        return findings.Any(finding => finding.Severity >= least) ? ExitCode.Findings : ExitCode.Fine;
    }

    private static void PrintRest(Screen screen, List<Judgement> judged, string format)
    {
        foreach (var judgement in judged.Where(_ => format == "text"))
        {
            var kept = judgement.Expectations.Count(result => result.Holds);
            var expectations = judgement.HasErrors ? "" : $"; {kept} of {"expectation".ToQuantity(judgement.Expectations.Length)} hold";
            screen.Result($"{judgement.Ruleset.House?.Name ?? "No ruleset"}: {"movement".ToQuantity(judgement.Catalogue.Movements.Length)}, {"target".ToQuantity(judgement.Ruleset.Targets.Length)}, {"criterion".ToQuantity(judgement.Ruleset.Criteria.Length)}{expectations}.\n");
            screen.Result(AmendmentText.Print(judgement.Ruleset));
            foreach (var accepted in judgement.Accepted)
            {
                screen.Result($"  accepted: {accepted.Finding.Code} at {accepted.Finding.Location}: {accepted.Finding.Headline} (\"{accepted.By.Because}\")\n");
            }

            foreach (var later in judgement.Ruleset.NotYetApplied)
            {
                screen.Result($"  read, not yet applied: {later.What} ({later.Count}, first at {later.First})\n");
            }
        }
    }
}
