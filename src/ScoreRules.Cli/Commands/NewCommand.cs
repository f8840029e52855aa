using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Starting;

namespace ScoreRules.Cli.Commands;

/// <summary><c>new</c>: writes a house to start from.</summary>
internal static class NewCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var folder = CommonOptions.Names("FOLDER", "The folder to make; it must not be there yet, or be empty.", 1, 1);
        var target = new Option<string?>("--target") { Description = "The muscle group to begin with.", HelpName = "TARGET" };
        var command = new Command("new", "Writes a small house to start from, with notes, and a page with the words it may use.") { folder, target };
        command.SetAction(parsed => Write(screen, parsed.GetValue(folder)![0], parsed.GetValue(target)));
        return command;
    }

    private static int Write(Screen screen, string folder, string? target)
    {
        NewFolder.Check(folder);
        var shared = HouseFolder.ReadShared(folder);
        if (shared.Files.IsEmpty)
        {
            throw new HouseException($"A house uses the words and movements of a folder named \"shared\" beside it, and there is none beside \"{folder}\". Make the house next to such a folder, for example rulesets/my-house beside rulesets/shared, or copy rulesets/shared there first.");
        }

        var files = StarterHouse.Make(NameOf(folder), shared, target);
        NewFolder.Write(folder, files.Select(file => (file.Name, file.Text)));
        var typed = folder.TrimEnd('/', '\\');
        screen.Result(string.Concat(files.Select(file => $"{typed}/{file.Name}\n")));
        screen.Error($"Next: scorerules rank {typed}, then open {typed}/{files[0].Name} and change what you disagree with.");
        return ExitCode.Fine;
    }

    // The folder's name becomes the ruleset's; signs that no name can hold are left out.
    private static string NameOf(string folder)
    {
        var name = new string([.. Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder))).Where(sign => sign != '"' && !char.IsControl(sign))]);
        return name.Trim().Length == 0 ? "my house" : name;
    }
}
