namespace ScoreRules.Statistics.Effects;

/// <summary>Effects of a study that compares two separate groups. Positive when the first group has the higher mean.</summary>
public static class TwoGroupEffects
{
    /// <summary>Pooled standard deviation: square root of ((n1-1) s1^2 + (n2-1) s2^2) / (n1 + n2 - 2).</summary>
    public static double PooledDeviation(GroupSummary first, GroupSummary second) =>
        Math.Sqrt((((first.Count - 1) * first.Variance) + ((second.Count - 1) * second.Variance)) / Degrees(first, second));

    /// <summary>Difference of means over the pooled standard deviation, uncorrected, with the variance (n1+n2)/(n1 n2) + d^2 / (2 (n1+n2)) (Borenstein, Hedges, Higgins and Rothstein 2009, Introduction to Meta-Analysis, chapter 4).</summary>
    public static EffectSize CohenD(GroupSummary first, GroupSummary second)
    {
        var d = (first.Mean - second.Mean) / PooledDeviation(first, second);
        return new EffectSize(d, LargeSampleVariance(d, first, second));
    }

    /// <summary>Hedges' g with the exact correction, g = J(n1+n2-2) d, and the large-sample variance 1/n1 + 1/n2 + g^2 / (2 (n1+n2)) (Hedges 1981, Journal of Educational Statistics 6:107; Hedges and Olkin 1985, Statistical Methods for Meta-Analysis).</summary>
    public static EffectSize HedgesG(GroupSummary first, GroupSummary second)
    {
        var g = SmallSampleCorrection.Exact(Degrees(first, second)) * CohenD(first, second).Value;
        return new EffectSize(g, LargeSampleVariance(g, first, second));
    }

    /// <summary>Hedges' g with the approximate correction J and the variance J^2 v(d) (Borenstein and others 2009, chapter 4). Kept to compare with published figures.</summary>
    public static EffectSize HedgesGApproximate(GroupSummary first, GroupSummary second)
    {
        var correction = SmallSampleCorrection.Approximate(Degrees(first, second));
        var d = CohenD(first, second);
        return new EffectSize(correction * d.Value, correction * correction * d.Variance);
    }

    /// <summary>Difference of means in the outcome's unit, variance s1^2/n1 + s2^2/n2.</summary>
    public static EffectSize MeanDifference(GroupSummary first, GroupSummary second) => new(first.Mean - second.Mean, first.VarianceOfMean + second.VarianceOfMean);

    /// <summary>Logarithm of the ratio of means, variance s1^2/(n1 m1^2) + s2^2/(n2 m2^2) (Hedges, Gurevitch and Curtis 1999, Ecology 80:1150).</summary>
    /// <exception cref="StatisticsInputException">A mean that is not above 0.</exception>
    public static EffectSize LogRatioOfMeans(GroupSummary first, GroupSummary second) =>
        new(LogRatio.Of(first, second), LogRatio.RelativeVariance(first) + LogRatio.RelativeVariance(second));

    private static int Degrees(GroupSummary first, GroupSummary second) => first.Count + second.Count - 2;

    private static double LargeSampleVariance(double effect, GroupSummary first, GroupSummary second) =>
        (1.0 / first.Count) + (1.0 / second.Count) + (effect * effect / (2.0 * (first.Count + second.Count)));
}
