using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Houses;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Publishing.Vocabulary;
using ScoreRules.Tiering;

namespace ScoreRules.Starting;

/// <summary>Makes a house to start from: it is judged before it is given away, so that it passes its own check.</summary>
public static class StarterHouse
{
    private const string Main = "house.rules";
    private const string Others = "targets.rules";

    /// <summary>The files of a new house.</summary>
    /// <param name="name">Name of the ruleset.</param>
    /// <param name="shared">The shared words and movements it will stand beside.</param>
    /// <param name="target">The target it is about; null for the first of the shared movements.</param>
    /// <exception cref="HouseException">There is no such target, or the shared words are not those a starter needs.</exception>
    public static ImmutableArray<StarterFile> Make(string name, HouseSources shared, string? target)
    {
        var targets = Targets(shared);
        var own = target is null ? targets[0] : Find(targets, target);
        var house = StarterText.House(name, own);
        var others = StarterText.Targets(targets.Where(other => other != own));
        var judgement = Judged(shared, house, others);
        house += Expectations(judgement, own.Name);
        return
        [
            new StarterFile(Main, house), new StarterFile(Others, others),
            new StarterFile("WORDS.md", WordsMarkdown.Print($"Words of {name}", new WordList(Judged(shared, house, others)).Entries)),
        ];
    }

    private static ImmutableArray<StarterTarget> Targets(HouseSources shared)
    {
        var trained = TrainedTargets.In(shared.Files.Where(file => !file.IsSpreadsheet).Select(file => new SourceText(file.Path, file.Text)));
        var muscle = Judge.Run(shared).Ruleset.Muscles.FirstOrDefault()?.Info.Name;
        if (trained.IsEmpty || muscle is null)
        {
            throw new HouseException("The shared folder declares no muscles, or no movement in it says what it trains, so there is nothing to start from.");
        }

        // With the targets declared in any way at all, the movements can be read, and the muscles counted from them.
        var bare = trained.Select(pair => new StarterTarget(pair.Target, pair.FirstMovement, [muscle])).ToList();
        var read = Judge.Run(With(shared, new HouseFile(Others, string.Join("\n", bare.Select(target => target.Text)), "", IsSpreadsheet: false)));
        var primeMover = read.Ruleset.Attributes.FirstOrDefault(attribute => NameText.Same(attribute.Name, WellKnownAttributes.PrimeMover));
        return [.. bare.Select(target => primeMover is null ? target : target.Counted(read.Catalogue, primeMover))];
    }

    private static StarterTarget Find(ImmutableArray<StarterTarget> targets, string name)
    {
        if (targets.FirstOrDefault(target => NameText.Same(target.Name, name)) is { } found)
        {
            return found;
        }

        var all = targets.Select(target => target.Name).ToList();
        var near = NameSuggester.Nearest(name, all);
        throw new HouseException($"No movement trains \"{name}\". {(near.IsEmpty ? $"Movements train: {string.Join(", ", all)}." : $"Did you mean \"{near[0]}\"?")}");
    }

    private static Judgement Judged(HouseSources shared, string house, string others)
    {
        var judgement = Judge.Run(With(shared, new HouseFile(Main, house, "", IsSpreadsheet: false), new HouseFile(Others, others, "", IsSpreadsheet: false)));
        return judgement.HasErrors
            ? throw new HouseException($"The shared folder does not fit a starter house: {DiagnosticText.Short(judgement.Findings.First(finding => finding.Severity == Severity.Error))}")
            : judgement;
    }

    private static string Expectations(Judgement judgement, string target)
    {
        var ranking = judgement.Rankings.First(ranking => ranking.Target.Name == target);
        var (best, last) = (ranking.Placements[0], ranking.Placements[^1]);
        var benchmark = ranking.Benchmark!;
        var order = best.Rank == last.Rank
            ? $"{Written(best)} is no lower than {NameWriting.Written(best.Tier.Name)}"
            : $"{Written(best)} is above {Written(last)}";
        return StarterText.Expectations($"{order} for {NameWriting.Written(target)}", $"{NameWriting.Written(benchmark.Movement.Name)} is in {StarterText.MiddleTier} for {NameWriting.Written(target)}");
    }

    private static string Written(Placement placement) => NameWriting.Written(placement.Row.Movement.Name);

    private static HouseSources With(HouseSources shared, params HouseFile[] files) => shared with { Files = [.. files, .. shared.Files] };
}
