using System.Collections.Immutable;
using System.CommandLine;
using ScoreRules.Catalogue;
using ScoreRules.Cli.Terminal;
using ScoreRules.Houses;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Publishing;
using ScoreRules.Publishing.Derivation;
using ScoreRules.Publishing.Pictures;

namespace ScoreRules.Cli.Commands;

/// <summary><c>derive</c>: what mechanics says about a movement, in numbers and a picture.</summary>
internal static class DeriveCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Screen screen)
    {
        var names = CommonOptions.Names("HOUSE MOVEMENT", "A folder of rule text (left out, the current folder) and the name of a movement.", 1, 2);
        var target = CommonOptions.Target();
        var format = CommonOptions.Format("text", "json", "svg");
        var file = new Option<string?>("--out") { Description = "Write to this file instead of the screen.", HelpName = "FILE" };
        var color = CommonOptions.Color();
        var command = new Command("derive", "Shows what mechanics derives for one movement: load and muscle length over the range, facts with intervals, what is missing.") { names, target, format, file, color };
        command.SetAction(parsed =>
        {
            CommonOptions.Apply(screen, parsed.GetValue(color));
            var typed = parsed.GetValue(names)!;
            var judgement = Judge.Run(HouseFolder.Read(MovementChoice.House(typed, "derive")));
            if (judgement.HasErrors)
            {
                return FindingsPrinter.Stopped(judgement, screen);
            }

            Write(screen, Form(judgement, MovementChoice.Find(judgement, typed[^1]), parsed.GetValue(target) ?? [], parsed.GetValue(format)!), parsed.GetValue(file));
            return ExitCode.Fine;
        });
        return command;
    }

    private static void Write(Screen screen, string text, string? file)
    {
        if (file is null)
        {
            screen.Result(text);
            return;
        }

        RuleFiles.Write(file, text);
        screen.Error($"Written: {file}");
    }

    private static string Form(Judgement judgement, Movement movement, string[] named, string format)
    {
        var derived = Targets(movement, named).Select(target => judgement.Derived!.Of(movement, target, withIntervals: true)).ToImmutableArray();
        if (format == "text")
        {
            return string.Join("\n", derived.Select(new DerivationText(judgement).Print));
        }

        if (derived.Length > 1)
        {
            throw new HouseException($"\"{movement.Name}\" trains {string.Join(" and ", derived.Select(one => one.Target.Name))}, and one picture or document shows one target. Add --target \"{derived[0].Target.Name}\".");
        }

        return format == "json"
            ? JudgementJson.Derive(judgement, derived[0])
            : MovementPicture.Draw(judgement.Ruleset, derived[0]) ?? throw new HouseException($"There is nothing to draw. {DerivationText.WhyNothing(derived[0])}");
    }

    private static ImmutableArray<TargetDefinition> Targets(Movement movement, string[] named)
    {
        if (movement.Trains.IsEmpty)
        {
            throw new HouseException($"\"{movement.Name}\" trains no target, so there is nothing to derive for. Add a line such as \"trains hamstrings\" to it.");
        }

        return named.Length == 0 ? movement.Trains : [.. named.Select(name => Target(movement, name)).Distinct()];
    }

    private static TargetDefinition Target(Movement movement, string name)
    {
        if (movement.Trains.FirstOrDefault(target => NameText.Same(target.Name, name)) is { } found)
        {
            return found;
        }

        var all = movement.Trains.Select(target => target.Name).ToList();
        var near = NameSuggester.Nearest(name, all);
        throw new HouseException($"\"{movement.Name}\" does not train \"{name}\". {(near.IsEmpty ? $"It trains {string.Join(", ", all)}." : $"Did you mean \"{near[0]}\"?")}");
    }
}
