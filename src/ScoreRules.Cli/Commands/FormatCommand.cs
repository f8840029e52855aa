using System.CommandLine;
using Humanizer;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Language.Formatting;
using ScoreRules.Language.Text;

namespace ScoreRules.Cli.Commands;

/// <summary><c>format</c>: lays rule text out in the one way, in place or from standard input.</summary>
internal static class FormatCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var names = CommonOptions.Names("HOUSE|FILE", "Folders or single files of rule text, or - for standard input; left out, the current folder.", 0, 1000);
        var check = new Option<bool>("--check") { Description = "Only list the files that would change; exit code 1 if there are any." };
        var command = new Command("format", "Lays rule text out in one way. Never changes what it says; what cannot be read is left alone.") { names, check };
        command.SetAction(parsed =>
        {
            var typed = parsed.GetValue(names) is { Length: > 0 } named ? named : [HouseChoice.Current()];
            return typed is ["-"] ? FormatInput(screen, parsed.GetValue(check)) : FormatFiles(screen, typed, parsed.GetValue(check));
        });
        return command;
    }

    private static int FormatInput(Screen screen, bool checkOnly)
    {
        var text = screen.ReadInput();
        var formatted = Format(screen, "(standard input)", text);
        if (!checkOnly)
        {
            screen.Result(formatted);
            return ExitCode.Fine;
        }

        if (formatted == text)
        {
            return ExitCode.Fine;
        }

        screen.Result("(standard input)\n");
        return ExitCode.Findings;
    }

    private static int FormatFiles(Screen screen, string[] typed, bool checkOnly)
    {
        // All files are read before the first is written, so that a name typed wrongly changes nothing.
        var files = typed.SelectMany(RuleFiles.Named).Distinct(StringComparer.Ordinal).Select(path => (Path: path, Text: RuleFiles.Read(path))).ToList();
        var changes = files.Select(file => (file.Path, file.Text, New: Format(screen, file.Path, file.Text))).Where(file => file.New != file.Text).ToList();
        foreach (var (path, _, text) in changes)
        {
            if (!checkOnly)
            {
                RuleFiles.Replace(path, text);
            }

            screen.Result($"{path}\n");
        }

        screen.Error($"{changes.Count} of {"file".ToQuantity(files.Count)} {(checkOnly ? "would change" : "changed")}.");
        return checkOnly && changes.Count > 0 ? ExitCode.Findings : ExitCode.Fine;
    }

    private static string Format(Screen screen, string path, string text)
    {
        var formatted = RulesFormatter.Format(new SourceText(path, text));
        if (formatted.Untouched > 0)
        {
            screen.Error($"{path}: {"stretch".ToQuantity(formatted.Untouched)} left as written, because something there cannot be read; scorerules check says what.");
        }

        return formatted.Text;
    }
}
