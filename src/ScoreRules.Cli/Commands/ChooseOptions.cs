using System.CommandLine;
using System.Globalization;
using ScoreRules.Catalogue;
using ScoreRules.Choosing;
using ScoreRules.Houses;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Cli.Commands;

/// <summary>What <c>choose</c> can be asked for on the command line.</summary>
internal sealed class ChooseOptions
{
    private const int MostMovements = 50;
    private const double DefaultMostAlike = 80;
    private const int DefaultCount = 3;

    private readonly Option<string[]> target = new("--target") { Description = "Choose for this target; may be given several times.", HelpName = "TARGET", DefaultValueFactory = _ => [] };
    private readonly Option<bool> week = new("--week") { Description = "Choose for a whole week: every target and every major muscle group." };
    private readonly Option<string?> profile = CommonOptions.Profile();
    private readonly Option<double?> count = Number("--count", "N", "How many movements at most; left out, 3 for targets, and for a week the fewest that train everything.", 1, MostMovements, whole: true);
    private readonly Option<double?> minutes = Number("--minutes", "M", "The most that set-up times may add up to, in minutes.", 0, 1440, whole: false);
    private readonly Option<double?> spine = Number("--spine", "N", "The most that ratings of axial load, on the spine, may add up to.", 0, 1000, whole: false);
    private readonly Option<double?> alike = Number("--alike", "N", "No two may be more alike than this, in %; left out, 80.", 0, 100, whole: false);

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { target, week, profile, count, minutes, spine, alike })
        {
            command.Add(option);
        }
    }

    /// <summary>The profile named.</summary>
    public string? Profile(ParseResult parsed) => parsed.GetValue(profile);

    /// <summary>What is asked for: on the command line, or by the house.</summary>
    /// <exception cref="HouseException">It makes no sense, or the house asks for nothing.</exception>
    public IEnumerable<ChoiceRequest> Requests(Judgement judgement, ParseResult parsed)
    {
        var (names, isWeek) = (parsed.GetValue(target) ?? [], parsed.GetValue(week));
        if (isWeek && names.Length > 0)
        {
            throw new HouseException("Choose for a week or for targets: take --week or --target away.");
        }

        var rankings = TargetChoice.Of(judgement, names);
        if (isWeek || names.Length > 0)
        {
            var targets = rankings.Select(ranking => ranking.Target).Where(one => !isWeek || one.Parent is null);
            return [Wanted(judgement, parsed, [.. targets], isWeek)];
        }

        Refuse(parsed);
        return judgement.Ruleset.Choices.IsEmpty
            ? throw new HouseException($"This house asks for no choice itself. Type --target TARGET or --week. Targets are: {string.Join(", ", rankings.Select(ranking => ranking.Target.Name))}.")
            : judgement.Ruleset.Choices.Select(ChoiceRequest.Of);
    }

    private ChoiceRequest Wanted(Judgement judgement, ParseResult parsed, System.Collections.Immutable.ImmutableArray<TargetDefinition> targets, bool isWeek)
    {
        var totals = new[] { Total(judgement, parsed, minutes, WellKnownAttributes.SetUp, 60), Total(judgement, parsed, spine, WellKnownAttributes.AxialLoad, 1) };
        return new ChoiceRequest(targets, parsed.GetValue(count) is { } most ? (int)most : isWeek ? null : DefaultCount)
        {
            IsWeek = isWeek,
            MostAlike = (parsed.GetValue(alike) ?? DefaultMostAlike) / 100,
            Totals = [.. totals.OfType<(AttributeDefinition, double)>()],
        };
    }

    private static (AttributeDefinition, double)? Total(Judgement judgement, ParseResult parsed, Option<double?> option, string name, double scale)
    {
        if (parsed.GetValue(option) is not { } most)
        {
            return null;
        }

        var attribute = judgement.Ruleset.Attributes.FirstOrDefault(one => NameText.Same(one.Name, name) && !one.IsWord && (scale == 1 || one.Unit == "s"));
        return attribute is null
            ? throw new HouseException($"This house does not record \"{name}\"{(scale == 1 ? "" : " in s")}, which {option.Name} adds up.")
            : (attribute, most * scale);
    }

    // The choices of a house say all this themselves.
    private void Refuse(ParseResult parsed)
    {
        foreach (var option in new[] { count, minutes, spine, alike }.Where(option => parsed.GetValue(option) is not null))
        {
            throw new HouseException($"{option.Name} goes with --target or --week; the choices in the house say it themselves.");
        }
    }

    private static Option<double?> Number(string name, string helpName, string description, double least, double most, bool whole) => new(name)
    {
        Description = description,
        HelpName = helpName,
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most && (!whole || number == Math.Floor(number)))
            {
                return number;
            }

            result.AddError($"{name} takes a {(whole ? "whole number" : "number")} from {least.ToString(CultureInfo.InvariantCulture)} to {most.ToString(CultureInfo.InvariantCulture)}, not \"{text}\".");
            return null;
        },
    };
}
