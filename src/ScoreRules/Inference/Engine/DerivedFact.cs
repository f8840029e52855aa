namespace ScoreRules.Inference.Engine;

/// <summary>
/// A fact that rules put into working memory. A class, not a record: two rules may derive equal facts, and the engine must
/// still keep them apart.
/// </summary>
/// <param name="id">Which fact of its kind it is; rules wait for a kind and a number.</param>
internal abstract class DerivedFact(int id)
{
    /// <summary>Which fact of its kind it is.</summary>
    public int Id { get; } = id;
}
