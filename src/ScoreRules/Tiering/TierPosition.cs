namespace ScoreRules.Tiering;

/// <summary>Where inside its tier a placement stands.</summary>
public enum TierPosition
{
    /// <summary>The tier is open at one end, or cut by shares.</summary>
    Open,

    /// <summary>In the upper third of the tier's points.</summary>
    Upper,

    /// <summary>In the middle third.</summary>
    Middle,

    /// <summary>In the lower third.</summary>
    Lower,
}
