using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Evidence;

/// <summary>What a line says of a difference, in points: where it lies, and the number that was told. Open ends are infinite.</summary>
/// <param name="Low">At least so much.</param>
/// <param name="High">At most so much.</param>
/// <param name="Told">The number told: the least difference of a word, the measured one; 0 for "about the same".</param>
/// <param name="Deviation">Its own doubt, one standard deviation.</param>
internal readonly record struct ClaimRange(double Low, double High, double Told, double Deviation)
{
    /// <summary>Nothing.</summary>
    public static ClaimRange None { get; } = new(0, 0, 0, 0);

    /// <summary>What a finding says of the first side less the second.</summary>
    /// <param name="finding">The finding, with an amount.</param>
    /// <param name="amount">Its amount in points.</param>
    public static ClaimRange Of(StudyFinding finding, UncertainNumber amount) => finding.Verdict switch
    {
        StudyVerdict.BetterThan => new(amount.Number, double.PositiveInfinity, amount.Number, amount.Spread),
        StudyVerdict.MeasuredBetter => new(amount.Number, amount.Number, amount.Number, amount.Spread),
        _ => new(-amount.Number, amount.Number, 0, amount.Spread),
    };

    /// <summary>The same, seen from the other side.</summary>
    public ClaimRange Turned => new(-High, -Low, -Told, Deviation);

    /// <summary>A part of it.</summary>
    /// <param name="share">How large a part, above 0.</param>
    public ClaimRange Times(double share) => new(Low * share, High * share, Told * share, Deviation * share);

    /// <summary>Two parts together. Their doubts add up as they are, because the same people were measured.</summary>
    public ClaimRange Plus(ClaimRange other) => new(Low + other.Low, High + other.High, Told + other.Told, Deviation + other.Deviation);
}
