using System.CommandLine;
using ScoreRules.Cli.Commands;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Cli;

/// <summary>All commands, and what happens when they are typed wrongly.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command line.</summary>
    public static int Run(string[] args, Screen screen)
    {
        var root = Root(screen);
        if (UnknownCommand(root, args) is { } sentence)
        {
            screen.Error(sentence);
            return ExitCode.Misuse;
        }

        var parsed = root.Parse(args.Length == 0 ? ["--help"] : args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors.Select(error => error.Message).Distinct(StringComparer.Ordinal))
            {
                screen.Error(error);
            }

            screen.Error("scorerules --help lists the commands; scorerules COMMAND --help says what one takes.");
            return ExitCode.Misuse;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (HouseException problem)
        {
            screen.Error(problem.Message);
            return ExitCode.Misuse;
        }
    }

    private static string? UnknownCommand(RootCommand root, string[] args)
    {
        var commands = root.Subcommands.Select(command => command.Name).ToList();
        if (args.Length == 0 || args[0].StartsWith('-') || commands.Contains(args[0], StringComparer.Ordinal))
        {
            return null;
        }

        var near = NameSuggester.Nearest(args[0], commands);
        return near.IsEmpty
            ? $"There is no command \"{args[0]}\". Commands are: {string.Join(", ", commands)}."
            : $"There is no command \"{args[0]}\"; did you mean \"{near[0]}\"?";
    }

    private static RootCommand Root(Screen screen)
    {
        var root = new RootCommand("Judges movements by a coach's own rules and explains every placement. Education, not medical advice.")
        {
            CheckCommand.Create(screen),
            RankCommand.Create(screen),
            ExplainCommand.Create(screen),
            AskCommand.Create(screen),
            ChooseCommand.Create(screen),
            DeriveCommand.Create(screen),
            StudiesCommand.Create(screen),
            ReportCommand.Create(screen),
            TeachCommand.Create(screen),
            TestCommand.Create(screen),
            PublishCommand.Create(screen),
            VerifyCommand.Create(screen),
            CompareCommand.Create(screen),
            NewCommand.Create(screen),
            WordsCommand.Create(screen),
            FixCommand.Create(screen),
            FormatCommand.Create(screen),
            CodeCommand.Create(screen),
        };
        root.Add(CompletionCommand.Create(screen, root));
        return root;
    }
}
