using ScoreRules.Explanation;

namespace ScoreRules.Answers.Order;

/// <summary>One thing that sets two placements apart. What sets them apart adds up to the difference of their scores.</summary>
/// <param name="Name">The criterion or rule, in the author's words; for studies, their own word.</param>
/// <param name="Points">Points by which the upper one is ahead; negative where it is behind.</param>
public sealed record OrderReason(string Name, double Points)
{
    /// <summary>The criterion's part of the upper one, or null.</summary>
    public CriterionExplanation? Upper { get; init; }

    /// <summary>The criterion's part of the lower one, or null.</summary>
    public CriterionExplanation? Lower { get; init; }

    /// <summary>The award that only one of them has, as it held there; null for criteria.</summary>
    public RuleExplanation? Award { get; init; }

    /// <summary>Whether it is the upper one that has the award.</summary>
    public bool IsOfUpper { get; init; }
}
