using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Facts;

/// <summary>Working memory: what one statement contributes to a called fact. A class, so that equal parts are not confused.</summary>
internal sealed class ConceptPart(CallDefinition call, ThreeValuedSet rows)
{
    public CallDefinition Call { get; } = call;

    public ThreeValuedSet Rows { get; } = rows;
}
