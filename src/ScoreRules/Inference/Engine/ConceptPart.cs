namespace ScoreRules.Inference.Engine;

/// <summary>What one statement <c>call</c> adds to a called fact.</summary>
/// <param name="id">Position of the statement among the calls.</param>
/// <param name="rows">Where its condition holds, in its scope.</param>
internal sealed class ConceptPart(int id, ThreeValuedSet rows) : DerivedFact(id)
{
    /// <summary>Where its condition holds, in its scope.</summary>
    public ThreeValuedSet Rows { get; } = rows;
}
