using System.CommandLine;
using ScoreRules.Choosing;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Publishing.Choices;

namespace ScoreRules.Cli.Commands;

/// <summary><c>choose</c>: a few movements that go together, for targets or a week; or the choices that stand in a house.</summary>
internal static class ChooseCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var house = CommonOptions.Names("HOUSE", "A folder of rule text; left out, the current folder. Without --target and --week, the choices that the house asks for itself.", 0, 1);
        var options = new ChooseOptions();
        var date = CommonOptions.Date();
        var format = CommonOptions.Format("text", "json");
        var color = CommonOptions.Color();
        var command = new Command("choose", "Picks the few movements that go together best, exactly, and says what each is there for.") { house, date, format, color };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var judgement = Judge.Run(HouseFolder.Read(HouseChoice.Of(parsed.GetValue(house))), options.Profile(parsed), parsed.GetValue(date));
            return judgement.HasErrors ? FindingsPrinter.Stopped(judgement, screen) : Choose(screen, judgement, options.Requests(judgement, parsed), parsed.GetValue(format)!);
        });
        return command;
    }

    private static int Choose(Screen screen, Judgement judgement, IEnumerable<ChoiceRequest> requests, string format)
    {
        var choices = requests.Select(request => (For: Seen(judgement, request), request)).Select(pair => (pair.For, Chooser.Choose(pair.For, pair.request))).ToList();
        screen.Result(format == "json" ? ChoiceJson.Print(judgement, choices) : new ChoiceText(judgement).Print(choices));
        return choices.TrueForAll(pair => pair.Item2.Obstacle is null) ? ExitCode.Fine : ExitCode.Findings;
    }

    // A profile named on the command line comes before the one that a choice names.
    private static Judgement Seen(Judgement judgement, ChoiceRequest request) =>
        judgement.Profile is null && request.Statement?.Profile is { } name ? Judge.For(judgement, name) : judgement;
}
