using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Publishing;

namespace ScoreRules.Cli.Commands;

/// <summary><c>code</c>: what the code of a finding means, with a wrong and a right example.</summary>
internal static class CodeCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var code = CommonOptions.Names("CODE", "A code such as SR2003; left out, all codes are listed.", 0, 1);
        var command = new Command("code", "Explains the code of a finding.") { code };
        command.SetAction(parsed => Print(screen, parsed.GetValue(code) is { Length: > 0 } named ? named[0] : null));
        return command;
    }

    private static int Print(Screen screen, string? code)
    {
        if (code is null)
        {
            screen.Result(string.Concat(DiagnosticPages.All.Select(page => $"{page.Code}  {page.Title}\n")));
            return ExitCode.Fine;
        }

        if (DiagnosticPages.Find(code) is not { } found)
        {
            screen.Error($"There is no code \"{code}\". A code is SR and four digits, such as SR2003; scorerules code lists all of them.");
            return ExitCode.Misuse;
        }

        screen.Result(found.Text);
        return ExitCode.Fine;
    }
}
