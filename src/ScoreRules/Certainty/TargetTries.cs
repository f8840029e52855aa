using ScoreRules.Evidence;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Scoring;
using ScoreRules.Statistics.Draws;

namespace ScoreRules.Certainty;

/// <summary>Draws the scores of a target: weights, criteria and points in force, unknown worths, judgements by another movement, studies, doubt of the principles, kept orders.</summary>
internal sealed class TargetTries
{
    private readonly TargetEvidence evidence;
    private readonly CriterionTable criteria;
    private readonly Admitted admitted;
    private readonly (AwardDefinition Award, int Place)[] awards;
    private readonly ActingRows acting;
    private readonly PlaceChain chain;
    private readonly TargetNoise? noise;
    private readonly double[] moved;
    private readonly bool[] inForce;

    /// <summary>Prepares the draws of a target.</summary>
    public TargetTries(Judgement judgement, ScoreTable scores, TargetEvidence evidence, Admitted admitted)
    {
        this.evidence = evidence;
        this.admitted = admitted;
        criteria = CriterionTable.Of(judgement, scores, evidence, admitted);
        awards = [.. judgement.Ruleset.Awards.Select(award => (award, admitted.PlaceOf(award)))];
        acting = new ActingRows(judgement.Ruleset.Awards, evidence.Rows);
        chain = PlaceChain.Of(judgement.Ruleset, evidence.Rows);
        noise = TargetNoise.Of(judgement.Ruleset, evidence);
        moved = new double[evidence.Belief?.Places.Length ?? 0];
        inForce = new bool[admitted.Count];
    }

    /// <summary>Fills the scores of all movements of the target.</summary>
    /// <param name="generator">Where random numbers come from.</param>
    /// <param name="right">Which doubtful statements are in force.</param>
    /// <param name="inferred">What the rules find with them.</param>
    /// <param name="scores">Filled, by movement.</param>
    public void Next(Generator generator, ReadOnlySpan<bool> right, InferenceResult inferred, double[] scores)
    {
        criteria.Fill(generator, right, scores);
        var gets = acting.In(inferred);
        for (var i = 0; i < awards.Length; i++)
        {
            var points = UncertainDraw.Next(awards[i].Award.Amount, generator);
            if (awards[i].Place < 0 || right[awards[i].Place])
            {
                Give(points, gets[i], scores);
            }
        }

        right.CopyTo(inForce);
        chain.Set(scores, IsInForce);
        Weigh(scores);
        noise?.Add(generator, scores);
        Hold(scores);
        chain.Follow(scores, IsTested, IsInForce);
    }

    private bool IsInForce(PlaceDefinition place) => admitted.PlaceOf(place) is var at && (at < 0 || inForce[at]);

    private bool IsTested(int place) => evidence.Movements[place].IsTested;

    private static void Give(double points, bool[] gets, double[] scores)
    {
        for (var i = 0; i < scores.Length; i++)
        {
            scores[i] += gets[i] ? points : 0;
        }
    }

    private void Weigh(double[] scores)
    {
        if (evidence.Belief is { } belief)
        {
            Take(belief, scores);
            belief.Update.Move(moved);
            PutBack(belief, scores);
        }
    }

    private void Hold(double[] scores)
    {
        if (evidence.Belief is { Orders: { } orders } belief)
        {
            Take(belief, scores);
            orders.Apply(moved);
            PutBack(belief, scores);
        }
    }

    private void Take(TargetBelief belief, double[] scores)
    {
        for (var i = 0; i < moved.Length; i++)
        {
            moved[i] = scores[belief.Places[i]];
        }
    }

    private void PutBack(TargetBelief belief, double[] scores)
    {
        for (var i = 0; i < moved.Length; i++)
        {
            scores[belief.Places[i]] = moved[i];
        }
    }
}
