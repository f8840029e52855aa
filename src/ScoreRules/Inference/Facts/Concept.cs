namespace ScoreRules.Inference.Facts;

/// <summary>Working memory: a called fact is complete: all statements that derive it have reported. Its rows are in the workspace.</summary>
internal sealed class Concept(string key)
{
    public string Key { get; } = key;
}
