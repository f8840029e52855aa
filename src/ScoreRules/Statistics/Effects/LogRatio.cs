namespace ScoreRules.Statistics.Effects;

/// <summary>What ratios of means have in common.</summary>
internal static class LogRatio
{
    public static double Of(GroupSummary first, GroupSummary second) =>
        Math.Log(Require.Positive(first.Mean, "A mean in a ratio of means") / Require.Positive(second.Mean, "A mean in a ratio of means"));

    public static double RelativeVariance(GroupSummary group) => group.VarianceOfMean / (group.Mean * group.Mean);
}
