namespace ScoreRules.Statistics.Effects;

/// <summary>Effects of a study with two groups, each measured before and after.</summary>
public static class ControlledChangeEffects
{
    /// <summary>Deviation before, pooled over both groups.</summary>
    public static double PooledDeviationBefore(RepeatedSummary treated, RepeatedSummary control) => TwoGroupEffects.PooledDeviation(treated.First, control.First);

    /// <summary>
    /// Difference of the changes over the pooled deviation before: J(nT + nC - 2) ((after - before of the treated) - (the same of the
    /// control)) / s (Morris 2008, Organizational Research Methods 11:364, his d of pooled pretest, with the exact correction), variance
    /// 2 (1 - r) (1/nT + 1/nC) + g^2 / (2 (nT + nC)).
    /// </summary>
    /// <param name="treated">The treated group, before first.</param>
    /// <param name="control">The control group, before first.</param>
    /// <param name="correlation">Correlation between before and after, common to both groups, between -1 and 1.</param>
    /// <exception cref="StatisticsInputException">A correlation out of its range.</exception>
    public static EffectSize HedgesG(RepeatedSummary treated, RepeatedSummary control, double correlation)
    {
        Require.Correlation(correlation, "The correlation between before and after");
        var people = treated.Count + control.Count;
        var change = treated.Second.Mean - treated.First.Mean - (control.Second.Mean - control.First.Mean);
        var g = SmallSampleCorrection.Exact(people - 2) * change / PooledDeviationBefore(treated, control);
        return new EffectSize(g, (2 * (1 - correlation) * ((1.0 / treated.Count) + (1.0 / control.Count))) + (g * g / (2.0 * people)));
    }
}
