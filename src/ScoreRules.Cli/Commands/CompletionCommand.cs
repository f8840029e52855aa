using System.CommandLine;
using ScoreRules.Cli.Completion;
using ScoreRules.Cli.Terminal;

namespace ScoreRules.Cli.Commands;

/// <summary><c>completion</c>: a script that completes our commands in a shell.</summary>
internal static class CompletionCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen, RootCommand root)
    {
        var shells = string.Join(", ", CompletionScript.Shells);
        var shell = CommonOptions.Names("SHELL", $"One of {shells}.", 1, 1);
        shell.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && !CompletionScript.Shells.Contains(result.Tokens[0].Value, StringComparer.Ordinal))
            {
                result.AddError($"There is no script for \"{result.Tokens[0].Value}\". Shells are: {shells}.");
            }
        });
        var command = new Command("completion", "Prints a script that completes commands, options and houses in your shell.") { shell };
        command.SetAction(parsed =>
        {
            screen.Result(CompletionScript.For(parsed.GetValue(shell)![0], CommandWords.Of(root)));
            return ExitCode.Fine;
        });
        return command;
    }
}
