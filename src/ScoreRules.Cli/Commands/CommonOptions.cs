using System.CommandLine;
using System.Globalization;
using ScoreRules.Cli.Terminal;

namespace ScoreRules.Cli.Commands;

/// <summary>Options and arguments that several commands share.</summary>
internal static class CommonOptions
{
    /// <summary><c>--format</c>.</summary>
    public static Option<string> Format(params string[] forms)
    {
        var option = new Option<string>("--format") { Description = $"Form of the output: {string.Join(", ", forms)}.", DefaultValueFactory = _ => forms[0], HelpName = string.Join('|', forms) };
        option.Validators.Add(result =>
        {
            var value = result.Tokens.Count == 0 ? forms[0] : result.Tokens[^1].Value;
            if (!forms.Contains(value, StringComparer.Ordinal))
            {
                result.AddError($"There is no form \"{value}\". Forms are: {string.Join(", ", forms)}.");
            }
        });
        return option;
    }

    /// <summary><c>--color</c>.</summary>
    public static Option<string> Color()
    {
        var option = new Option<string>("--color") { Description = "Emphasis: auto (only on a terminal), always, never.", DefaultValueFactory = _ => "auto", HelpName = "auto|always|never" };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && result.Tokens[^1].Value is not ("auto" or "always" or "never"))
            {
                result.AddError($"--color takes auto, always or never, not \"{result.Tokens[^1].Value}\".");
            }
        });
        return option;
    }

    /// <summary><c>--target</c>, which may be repeated.</summary>
    public static Option<string[]> Target() => new("--target") { Description = "Only this target; may be given several times.", HelpName = "TARGET", DefaultValueFactory = _ => [] };

    /// <summary><c>--profile</c>.</summary>
    public static Option<string?> Profile() => new("--profile") { Description = "Look through one of the house's profiles: kit, sore joints, audience.", HelpName = "PROFILE" };

    /// <summary><c>--date</c>.</summary>
    public static Option<DateOnly?> Date()
    {
        var option = new Option<DateOnly?>("--date")
        {
            Description = "The day to judge for, such as 2031-08-20; left out, the day on which the house was checked.",
            HelpName = "YEAR-MONTH-DAY",
            CustomParser = result =>
            {
                if (DateOnly.TryParseExact(result.Tokens[0].Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
                {
                    return day;
                }

                result.AddError($"\"{result.Tokens[0].Value}\" is not a day. Write year, month and day, such as 2031-08-20.");
                return null;
            },
        };
        return option;
    }

    /// <summary>Names on the command line, so many at least and at most; one that starts with a dash is a mistyped option.</summary>
    public static Argument<string[]> Names(string name, string description, int least, int most)
    {
        var argument = new Argument<string[]>(name) { Description = description, Arity = ArgumentArity.ZeroOrMore, DefaultValueFactory = _ => [] };
        argument.Validators.Add(result =>
        {
            var dashed = result.Tokens.Where(token => token.Value.Length > 1 && token.Value[0] == '-').ToList();
            foreach (var token in dashed)
            {
                result.AddError($"There is no option \"{token.Value}\" here.");
            }

            if (dashed.Count > 0)
            {
                return;
            }

            if (result.Tokens.Count < least || result.Tokens.Count > most)
            {
                result.AddError(result.Tokens.Count < least ? $"{name} is missing." : $"Too many names: \"{result.Tokens[most].Value}\". A name of several words goes in quotes.");
            }
        });
        return argument;
    }

    /// <summary>Leaves out what takes a second.</summary>
    public static Option<bool> Quick() => new("--quick") { Description = "Leave out how sure the placements are, which takes 10,000 tries." };

    /// <summary>Applies <c>--color</c>.</summary>
    public static void Apply(Screen screen, string? color) => screen.Emphasise(color switch { "always" => true, "never" => false, _ => null });
}
