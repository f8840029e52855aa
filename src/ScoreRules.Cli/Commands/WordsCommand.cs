using System.CommandLine;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Publishing;
using ScoreRules.Publishing.Vocabulary;

namespace ScoreRules.Cli.Commands;

/// <summary><c>words</c>: what a house's text may say.</summary>
internal static class WordsCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var names = CommonOptions.Names("HOUSE NAME", "A folder of rule text (left out, the current folder) and a word to look up (left out, all words).", 0, 2);
        var format = CommonOptions.Format("text", "json", "markdown");
        var command = new Command("words", "Lists the words a house's text may use: attributes with their scales, movements, muscles, kit, targets, tiers.") { names, format };
        command.SetAction(parsed =>
        {
            var typed = parsed.GetValue(names) ?? [];
            var onlyName = typed.Length == 1 && !Directory.Exists(typed[0]) && !File.Exists(typed[0]) && HouseFolder.IsHouse(".");
            var judgement = Judge.Run(HouseFolder.Read(typed.Length == 0 || onlyName ? HouseChoice.Current() : typed[0]));
            var name = typed.Length == 2 ? typed[1] : onlyName ? typed[0] : null;
            return Print(screen, judgement, name, parsed.GetValue(format)!);
        });
        return command;
    }

    private static int Print(Screen screen, Judgement judgement, string? name, string format)
    {
        var list = new WordList(judgement);
        var entries = name is null ? list.Entries : list.Matching(name);
        if (entries.IsEmpty && name is not null)
        {
            throw new HouseException($"There is no word \"{name}\" in this house. {DidYouMean(list, name)}");
        }

        screen.Result(format switch
        {
            "json" => JudgementJson.Words(judgement, entries),
            "markdown" => WordsMarkdown.Print($"Words of {judgement.Ruleset.House?.Name ?? "this house"}", entries),
            _ => WordsText.Print(entries),
        });
        if (judgement.HasErrors)
        {
            screen.Error($"{FindingsPrinter.Count(judgement.Findings)} in this house: words of statements that cannot be read are missing. scorerules check says where.");
        }

        return ExitCode.Fine;
    }

    private static string DidYouMean(WordList list, string name)
    {
        var near = list.Nearest(name);
        return near.IsEmpty ? "scorerules words lists all of them." : $"Did you mean {string.Join(", ", near.Select(word => $"\"{word}\""))}?";
    }
}
