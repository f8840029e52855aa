namespace ScoreRules.Statistics.Pooling;

/// <summary>A mean weighted by 1 / (v + tau squared), and the sums that every estimator is written in.</summary>
internal readonly record struct WeightedMean(double Mean, double Weight, double Squares, double Cubes, double Q, double SquaredQ)
{
    /// <summary>Degrees of freedom taken by the weights: sum w - sum w^2 / sum w, the trace of the residual projection.</summary>
    public double Trace => Weight - (Squares / Weight);

    /// <summary>Trace of the square of the residual projection.</summary>
    public double SquaredTrace => Squares - (2 * Cubes / Weight) + (Squares * Squares / (Weight * Weight));

    public static WeightedMean Of(IReadOnlyList<StudyEffect> studies, double tauSquared)
    {
        var (weight, squares, cubes, sum) = (0.0, 0.0, 0.0, 0.0);
        foreach (var study in studies)
        {
            var w = 1 / (study.Variance + tauSquared);
            weight += w;
            squares += w * w;
            cubes += w * w * w;
            sum += w * study.Effect;
        }

        var mean = sum / weight;
        var (q, squaredQ) = (0.0, 0.0);
        foreach (var study in studies)
        {
            var w = 1 / (study.Variance + tauSquared);
            var residual = study.Effect - mean;
            q += w * residual * residual;
            squaredQ += w * w * residual * residual;
        }

        return new WeightedMean(mean, weight, squares, cubes, q, squaredQ);
    }

    /// <summary>Sum of squares about the plain mean.</summary>
    public static double PlainSquares(IReadOnlyList<StudyEffect> studies)
    {
        var mean = studies.Average(study => study.Effect);
        return studies.Sum(study => (study.Effect - mean) * (study.Effect - mean));
    }

    /// <summary>Studies to be pooled are two or more.</summary>
    public static void RequireSeveral(IReadOnlyList<StudyEffect> studies)
    {
        if (studies.Count < 2)
        {
            throw new StatisticsInputException("Pooling takes two studies or more; the result of one study stands by itself.");
        }
    }
}
