using System.Collections.Immutable;

namespace ScoreRules.Cli.Completion;

/// <summary>The script for fish.</summary>
internal static class FishScript
{
    /// <summary>Prints it.</summary>
    public static string Print(ImmutableArray<CommandWords> commands) => $"""
        # Completion of scorerules for fish: scorerules completion fish > ~/.config/fish/completions/scorerules.fish
        complete -c scorerules -f
        {string.Join('\n', commands.SelectMany(Lines))}

        """;

    private static IEnumerable<string> Lines(CommandWords command)
    {
        yield return $"complete -c scorerules -n __fish_use_subcommand -a {command.Name} -d {CompletionScript.Quoted(command.Description)}";
        var inside = $"complete -c scorerules -n '__fish_seen_subcommand_from {command.Name}'";
        foreach (var option in command.Options)
        {
            var value = !option.TakesValue ? "" : option.Values.IsEmpty ? " -x" : $" -x -a {CompletionScript.Quoted(string.Join(' ', option.Values))}";
            yield return $"{inside} -l {option.Name.TrimStart('-')}{value} -d {CompletionScript.Quoted(option.Description)}";
        }

        if (!command.Values.IsEmpty)
        {
            yield return $"{inside} -a {CompletionScript.Quoted(string.Join(' ', command.Values))}";
        }
        else if (command.TakesHouses)
        {
            yield return $"{inside} -a {CompletionScript.Quoted(command.TakesFiles ? "(__fish_complete_suffix .rules)" : "(__fish_complete_directories)")}";
        }
    }
}
