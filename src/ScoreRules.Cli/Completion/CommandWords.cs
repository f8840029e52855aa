using System.Collections.Immutable;
using System.CommandLine;
using ScoreRules.Publishing;

namespace ScoreRules.Cli.Completion;

/// <summary>A command as a shell completes it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it does.</param>
/// <param name="Options">Its options.</param>
/// <param name="Argument">What its names mean, in capitals; empty when it takes none.</param>
internal sealed record CommandWords(string Name, string Description, ImmutableArray<OptionWords> Options, string Argument)
{
    /// <summary>Whether it takes folders of rule text.</summary>
    public bool TakesHouses => Argument.Contains("HOUSE", StringComparison.Ordinal) || Argument == "FOLDER";

    /// <summary>Whether it takes single files of rule text.</summary>
    public bool TakesFiles => Argument.Contains("FILE", StringComparison.Ordinal);

    /// <summary>Names that it knows beforehand.</summary>
    public ImmutableArray<string> Values => Argument switch
    {
        "SHELL" => CompletionScript.Shells,
        "CODE" => [.. DiagnosticPages.All.Select(page => page.Code)],
        _ => [],
    };

    /// <summary>All commands of the tool, in the order of its help.</summary>
    public static ImmutableArray<CommandWords> Of(RootCommand root) =>
    [
        .. root.Subcommands.Select(command => new CommandWords(
            command.Name, command.Description ?? "", [.. command.Options.Select(Words), new OptionWords("--help", "Says what the command takes.", false, [])],
            command.Arguments.Count == 0 ? "" : command.Arguments[0].Name)),
    ];

    private static OptionWords Words(Option option)
    {
        var values = option.HelpName is { } help && help.Contains('|', StringComparison.Ordinal) ? help.Split('|') : [];
        return new OptionWords(option.Name, option.Description ?? "", option.ValueType != typeof(bool), [.. values]);
    }
}
