namespace ScoreRules;

/// <summary>How a house is judged.</summary>
public sealed record JudgeOptions
{
    /// <summary>Name of the profile to judge for; null for nobody in particular.</summary>
    public string? Profile { get; init; }

    /// <summary>The day to judge for; null for the day on which the house says it was checked.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Whether to rank by what could be read although the house has errors. What could not is left out of account, cautions too.</summary>
    public bool DespiteErrors { get; init; }
}
