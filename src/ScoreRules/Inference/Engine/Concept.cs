namespace ScoreRules.Inference.Engine;

/// <summary>A called fact of which all ways in have reported.</summary>
/// <param name="id">Number of the called fact.</param>
/// <param name="rows">Where it holds by one way or another.</param>
internal sealed class Concept(int id, ThreeValuedSet rows) : DerivedFact(id)
{
    /// <summary>Where it holds by one way or another.</summary>
    public ThreeValuedSet Rows { get; } = rows;
}
