using System.Collections.Immutable;

namespace ScoreRules.Cli.Completion;

/// <summary>Scripts that teach a shell the commands, their options, and the folders that hold rule text.</summary>
internal static class CompletionScript
{
    /// <summary>The shells there is a script for.</summary>
    public static ImmutableArray<string> Shells { get; } = ["bash", "zsh", "fish"];

    /// <summary>The script of a shell.</summary>
    public static string For(string shell, ImmutableArray<CommandWords> commands) => shell switch
    {
        "bash" => BashScript.Print(commands),
        "zsh" => ZshScript.Print(commands),
        _ => FishScript.Print(commands),
    };

    /// <summary>A text in single quotes, for any of the three shells.</summary>
    public static string Quoted(string text) => $"'{text.Replace("'", "’", StringComparison.Ordinal)}'";
}
