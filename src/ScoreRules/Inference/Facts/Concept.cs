namespace ScoreRules.Inference.Facts;

/// <summary>Working memory: a called fact, complete: all statements that derive it have reported.</summary>
internal sealed class Concept(string key, ThreeValuedSet rows)
{
    public string Key { get; } = key;

    public ThreeValuedSet Rows { get; } = rows;
}
