using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Statistics.Draws;
using ScoreRules.Tiering;

namespace ScoreRules.Certainty;

/// <summary>How sure the placements of a house are, by trying out all that its authors admit may be otherwise. Within a target all movements see the same tries.</summary>
/// <param name="Targets">By target that is ranked, in the order of the rankings.</param>
/// <param name="TakenAsSure">Doubtful ways to called facts that were too many to try.</param>
public sealed record HouseCertainty(ImmutableArray<TargetCertainty> Targets, ImmutableArray<CallDefinition> TakenAsSure)
{
    /// <summary>How many tries are made.</summary>
    public const int Tries = 10_000;

    private const ulong Seed = 20_310_504;

    /// <summary>Makes the tries.</summary>
    /// <param name="judgement">A house that was ranked.</param>
    /// <param name="tries">How many, 1 or more.</param>
    public static HouseCertainty Of(Judgement judgement, int tries = Tries)
    {
        var admitted = Admitted.In(judgement.Ruleset);
        var variants = new CallVariants(judgement.Ruleset, judgement.Inferred!, admitted);
        return new HouseCertainty([.. judgement.Rankings.Select(ranking => Of(judgement, ranking, admitted, variants, tries))], admitted.TakenAsSure);
    }

    /// <summary>The certainty of a target; null when it is not ranked.</summary>
    public TargetCertainty? Of(TargetDefinition target) => Targets.FirstOrDefault(found => found.Ranking.Target.Index == target.Index);

    private static TargetCertainty Of(Judgement judgement, TargetRanking ranking, Admitted admitted, CallVariants variants, int tries)
    {
        var evidence = judgement.Evidence!.Targets[ranking.Target.Index];
        var draws = new TargetTries(judgement, judgement.Scores!, evidence, admitted);
        var tally = new TargetTally(judgement.Ruleset, ranking, admitted);
        var places = ranking.Placements.Select(placement => evidence.PlaceOf(placement.Row)!.Value).ToArray();
        var benchmark = ranking.Benchmark is { } row ? evidence.PlaceOf(row) : null;
        var (scores, own, right) = (new double[evidence.Rows.Length], new double[places.Length], new bool[admitted.Count]);
        var generator = new Generator(Seed);
        for (var i = 0; i < tries; i++)
        {
            admitted.Draw(generator, right);
            var inferred = variants.Of(right);
            draws.Next(generator, right, inferred, scores);
            for (var j = 0; j < own.Length; j++)
            {
                own[j] = scores[places[j]];
            }

            tally.Add(own, benchmark is { } place ? scores[place] : 0, right, inferred);
        }

        return tally.Close(ranking, tries);
    }
}
