using ScoreRules.Language.Binding;

namespace ScoreRules.Explanation;

/// <summary>What one criterion or award gave two placements.</summary>
/// <param name="Name">The criterion or award, in the author's words.</param>
/// <param name="First">Points it gave the first.</param>
/// <param name="Second">Points it gave the second.</param>
/// <param name="Statement">What its statement says about itself.</param>
public sealed record ComparedPoints(string Name, double First, double Second, StatementInfo Statement)
{
    /// <summary>Points by which the first is ahead; negative where it is behind.</summary>
    public double Apart => First - Second;
}
