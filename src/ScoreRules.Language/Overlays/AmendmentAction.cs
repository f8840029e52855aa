namespace ScoreRules.Language.Overlays;

/// <summary>What a house does with something of the house it builds on.</summary>
public enum AmendmentAction
{
    /// <summary>Some of its lines are replaced or added to.</summary>
    Changed,

    /// <summary>It is taken out.</summary>
    Dropped,
}
