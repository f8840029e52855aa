using ScoreRules.Catalogue;

namespace ScoreRules.Inference;

/// <summary>What conditions read: facts, and called facts that are complete.</summary>
internal interface IFactSource
{
    /// <summary>Facts, with what recipes have worked out.</summary>
    FactTable Facts { get; }

    /// <summary>A called fact.</summary>
    ThreeValuedSet Concept(string name);
}
