using System.Collections.Immutable;
using System.CommandLine;
using ScoreRules.Answers;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Language;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Publishing;

namespace ScoreRules.Cli.Commands;

/// <summary><c>ask</c>: answers a question about a house, or the questions that stand in it.</summary>
internal static class AskCommand
{
    // Of a line that no statement begins with.
    private const string NoStatement = "SR1016";

    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var names = CommonOptions.Names("HOUSE QUESTION", $"A folder of rule text (left out, the current folder) and a question; without one, the questions that the house asks itself. {Forms()}", 0, int.MaxValue);
        var target = CommonOptions.Target();
        var profile = CommonOptions.Profile();
        var date = CommonOptions.Date();
        var format = CommonOptions.Format("text", "json");
        var color = CommonOptions.Color();
        var command = new Command("ask", "Answers a question about a house: why, why not, what would change it, what is lost.") { names, target, profile, date, format, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var asked = QuestionChoice.Of(parsed.GetValue(names)!);
            var read = HouseFolder.Read(asked.House);
            var sources = asked.Question is { } words ? read.WithQuestion(words) : read;
            var judgement = Judge.Run(sources, parsed.GetValue(profile), parsed.GetValue(date)) with { Sources = read };
            return judgement.HasErrors ? Stopped(judgement, screen) : Answer(screen, judgement, asked, parsed.GetValue(target) ?? [], parsed.GetValue(format)!);
        });
        return command;
    }

    private static int Answer(Screen screen, Judgement judgement, QuestionChoice asked, string[] targets, string format)
    {
        var rankings = TargetChoice.Of(judgement, targets);
        var questions = judgement.Ruleset.Questions.Where(question => asked.Question is null || HouseSources.IsQuestion(question.Info.Location.Path)).ToList();
        if (questions.Count == 0)
        {
            throw new HouseException($"This house asks nothing itself. Type a question behind it. {Forms()}");
        }

        var answers = questions.Select(question => Answerer.Answer(judgement, question, rankings)).ToList();
        screen.Result(format == "json" ? AnswerJson.Print(judgement, answers) : new AnswerText(judgement).Print(answers));
        return ExitCode.Fine;
    }

    // A question that cannot be read is a slip of whoever types, not a fault of the house.
    private static int Stopped(Judgement judgement, Screen screen)
    {
        var errors = judgement.Findings.Where(finding => finding.Severity == Severity.Error).ToImmutableArray();
        if (errors.Any(error => !HouseSources.IsQuestion(error.Location.Path)))
        {
            return FindingsPrinter.Stopped(judgement, screen);
        }

        if (errors.Any(error => error.Code == NoStatement))
        {
            screen.Error("That is not a question that can be answered by computation.");
        }
        else
        {
            FindingsPrinter.Print(errors, screen.Message, brief: false);
        }

        screen.Error(Forms());
        return ExitCode.Misuse;
    }

    private static string Forms() => $"Questions are (\"to TIER\" and \"for TARGET\" may be left out):\n{string.Join("\n", QuestionForms.All.Select(form => $"  {form.Form}"))}";
}
