using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>An objection of the entry checks.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Headline">What is wrong; stands alone.</param>
/// <param name="Advice">A way out.</param>
public sealed record MechanicsFinding(FindingKind Kind, FindingSeverity Severity, string Headline, string Advice)
{
    /// <summary>The motion whose angle it is about, or null when it is about the whole or about a load.</summary>
    public JointMotion? Motion { get; init; }
}
