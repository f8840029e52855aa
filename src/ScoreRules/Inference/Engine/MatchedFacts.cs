using ScoreRules.Catalogue;

namespace ScoreRules.Inference.Engine;

/// <summary>
/// What a firing rule may read: given facts, and those derived facts that it waited for, no others. So nothing is ever read
/// before it is complete.
/// </summary>
internal sealed class MatchedFacts(FactTable given, DerivedFact[] matched, ConceptNames names) : IFactSource
{
    /// <inheritdoc/>
    public FactTable Facts { get; } = matched.OfType<WorkedOut>().Aggregate(given, (facts, worked) => facts.WithColumn(worked.Attribute, worked.Column));

    /// <inheritdoc/>
    public ThreeValuedSet Concept(string name)
    {
        var id = names.IdOf(name);
        return matched.OfType<Concept>().First(concept => concept.Id == id).Rows;
    }
}
