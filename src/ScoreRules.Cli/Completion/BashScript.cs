using System.Collections.Immutable;

namespace ScoreRules.Cli.Completion;

/// <summary>The script for bash.</summary>
internal static class BashScript
{
    /// <summary>Prints it.</summary>
    public static string Print(ImmutableArray<CommandWords> commands) => $$"""
        # Completion of scorerules for bash: put the line  source <(scorerules completion bash)  into ~/.bashrc

        # Folders that hold rule text, here or in rulesets, and any folder on the way to one.
        _scorerules_houses() {
          local folder
          for folder in "$1"*/ rulesets/"$1"*/; do
            folder=${folder%/}
            if compgen -G "$folder/*.rules" > /dev/null; then printf '%s\n' "$folder"; fi
          done
          compgen -d -- "$1"
        }

        _scorerules_offer() {
          local word
          COMPREPLY=()
          while IFS= read -r word; do COMPREPLY+=("$word"); done
        }

        _scorerules() {
          local current=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command=${COMP_WORDS[1]}
          COMPREPLY=()
          if [ "$COMP_CWORD" -eq 1 ]; then
            _scorerules_offer < <(compgen -W "{{string.Join(' ', commands.Select(command => command.Name))}}" -- "$current")
            return
          fi
          case "$command $before" in
        {{Lines(commands.SelectMany(AfterOption))}}
          esac
          case "$command $current" in
        {{Lines(commands.Select(Options))}}
          esac
          case "$command" in
        {{Lines(commands.Select(Names).OfType<string>())}}
          esac
        }

        complete -F _scorerules scorerules

        """;

    private static string Lines(IEnumerable<string> lines) => string.Join('\n', lines.Select(line => "    " + line));

    private static string Offer(IEnumerable<string> words) => $"_scorerules_offer < <(compgen -W \"{string.Join(' ', words)}\" -- \"$current\")";

    private static IEnumerable<string> AfterOption(CommandWords command) =>
        command.Options.Where(option => option.TakesValue).Select(option => $"\"{command.Name} {option.Name}\") {(option.Values.IsEmpty ? "" : Offer(option.Values) + "; ")}return ;;");

    private static string Options(CommandWords command) => $"\"{command.Name} -\"*) {Offer(command.Options.Select(option => option.Name))}; return ;;";

    private static string? Names(CommandWords command)
    {
        if (!command.Values.IsEmpty)
        {
            return $"{command.Name}) {Offer(command.Values)} ;;";
        }

        var files = command.TakesFiles ? " compgen -f -X '!*.rules' -- \"$current\";" : "";
        return command.TakesHouses ? $"{command.Name}) compopt -o filenames 2> /dev/null; _scorerules_offer < <({{ _scorerules_houses \"$current\";{files} }} | sort -u) ;;" : null;
    }
}
