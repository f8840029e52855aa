using System.Collections.Immutable;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Cli.Commands;

/// <summary>The targets meant by <c>--target</c>.</summary>
internal static class TargetChoice
{
    /// <summary>The rankings of the targets named; all when none is named.</summary>
    /// <exception cref="HouseException">There is no such target.</exception>
    public static ImmutableArray<TargetRanking> Of(Judgement judgement, string[] names)
    {
        if (judgement.Rankings.IsEmpty)
        {
            throw new HouseException("This house ranks nothing: it needs \"tiers\", at least one \"target\" and at least one \"criterion\".");
        }

        return names.Length == 0 ? judgement.Rankings : [.. names.Select(name => Find(judgement, name)).OrderBy(ranking => ranking.Target.Index).Distinct()];
    }

    private static TargetRanking Find(Judgement judgement, string name)
    {
        if (judgement.Rankings.FirstOrDefault(ranking => NameText.Same(ranking.Target.Name, name)) is { } found)
        {
            return found;
        }

        var all = judgement.Rankings.Select(ranking => ranking.Target.Name).ToList();
        var near = NameSuggester.Nearest(name, all);
        throw new HouseException($"There is no target \"{name}\". {(near.IsEmpty ? $"Targets are: {string.Join(", ", all)}." : $"Did you mean \"{near[0]}\"?")}");
    }
}
