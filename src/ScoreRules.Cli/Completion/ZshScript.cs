using System.Collections.Immutable;

namespace ScoreRules.Cli.Completion;

/// <summary>The script for zsh.</summary>
internal static class ZshScript
{
    /// <summary>Prints it.</summary>
    public static string Print(ImmutableArray<CommandWords> commands) => $$"""
        #compdef scorerules
        # Completion of scorerules for zsh: save it as _scorerules in a folder of $fpath, or put  source <(scorerules completion zsh)  below compinit in ~/.zshrc

        _scorerules() {
          local -a commands
          commands=(
        {{Lines(commands.Select(command => CompletionScript.Quoted($"{command.Name}:{command.Description}")))}}
          )
          if (( CURRENT == 2 )); then
            _describe command commands
            return
          fi
          local command=$words[2]
          shift words
          (( CURRENT-- ))
          case $command in
        {{Lines(commands.Select(Arguments))}}
          esac
        }

        if [ "$funcstack[1]" = _scorerules ]; then _scorerules "$@"; else compdef _scorerules scorerules; fi

        """;

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines.Select(line => "    " + line));

    private static string Arguments(CommandWords command) =>
        $"{command.Name}) _arguments {string.Join(' ', command.Options.Select(Option).Concat(Names(command)))} ;;";

    private static string Option(OptionWords option)
    {
        var value = !option.TakesValue ? "" : option.Values.IsEmpty ? ":value:" : $":value:({string.Join(' ', option.Values)})";
        return CompletionScript.Quoted($"{option.Name}[{Plain(option.Description)}]{value}");
    }

    private static IEnumerable<string> Names(CommandWords command)
    {
        if (!command.Values.IsEmpty)
        {
            yield return CompletionScript.Quoted($"*:name:({string.Join(' ', command.Values)})");
        }
        else if (command.TakesHouses)
        {
            yield return CompletionScript.Quoted(command.TakesFiles ? "*:house:_files -g \"*.rules\"" : "*:house:_files -/");
        }
    }

    private static string Plain(string text) => text.Replace('[', '(').Replace(']', ')').Replace(":", "\\:", StringComparison.Ordinal);
}
