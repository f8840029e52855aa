namespace ScoreRules.Inference.Facts;

/// <summary>Working memory: a recipe's column is in the fact table.</summary>
internal sealed class WorkedOut(int attribute)
{
    public int Attribute { get; } = attribute;
}
