using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>A tier and where it begins.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Index">Position, 0 for the best.</param>
/// <param name="Cut">What its border is measured by.</param>
/// <param name="Amount">Points, a score, or a share from 0 to 1; 0 for the rest.</param>
/// <param name="Location">Where it is declared.</param>
public sealed record TierDefinition(string Name, int Index, TierCut Cut, double Amount, SourceLocation Location)
{
    /// <summary>
    /// The lowest value that still belongs to the tier: a gap in points for cuts by gap, a score for cuts by score,
    /// minus infinity for the rest. Not used for cuts by share.
    /// </summary>
    public double LowerBorder => Cut switch
    {
        TierCut.Above or TierCut.Score => Amount,
        TierCut.Below or TierCut.Within => -Amount,
        _ => double.NegativeInfinity,
    };
}
