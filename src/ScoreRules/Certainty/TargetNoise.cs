using ScoreRules.Catalogue;
using ScoreRules.Evidence;
using ScoreRules.Language.Binding;
using ScoreRules.Statistics.Draws;
using ScoreRules.Statistics.Solving;

namespace ScoreRules.Certainty;

/// <summary>How far the scores of a target may be off together: what studies left of the principles' doubt for those that take part, all of it for the others. Like movements err alike.</summary>
internal sealed class TargetNoise
{
    private readonly double[][] factor;
    private readonly double[] normals;

    private TargetNoise(double[][] factor) => (this.factor, normals) = (factor, new double[factor.Length]);

    /// <summary>The doubt of a target; null when the house does not say how far its principles may be off.</summary>
    public static TargetNoise? Of(BoundRuleset ruleset, TargetEvidence evidence)
    {
        if (ruleset.Evidence?.PrinciplesMayBeOff is not { } sd || evidence.Rows.IsEmpty)
        {
            return null;
        }

        var kinship = new Kinship(ruleset.Attributes);
        var rows = evidence.Rows;
        var positions = rows.Select((_, place) => evidence.Belief?.Places.IndexOf(place) ?? -1).ToArray();
        double Covariance(int i, int j) => (positions[i], positions[j]) switch
        {
            ( >= 0, >= 0) => evidence.Belief!.Posterior.Covariance(positions[i], positions[j]),
            ( < 0, < 0) => sd * sd * (i == j ? 1 : kinship.Between(rows[i].Movement, rows[j].Movement)),
            _ => 0,
        };
        return new TargetNoise(SemidefiniteFactor.Of(rows.Length, Covariance));
    }

    /// <summary>Adds an error to each score.</summary>
    public void Add(Generator generator, double[] scores)
    {
        for (var i = 0; i < normals.Length; i++)
        {
            normals[i] = generator.NextNormal();
        }

        for (var i = 0; i < normals.Length; i++)
        {
            scores[i] += InnerProduct.Of(factor[i], normals.AsSpan(0, i + 1));
        }
    }
}
