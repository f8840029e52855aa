namespace ScoreRules.Publishing.Pictures;

/// <summary>From where a body is seen.</summary>
internal enum Viewpoint
{
    /// <summary>From the side.</summary>
    Side,

    /// <summary>From the front; the working side, a right one, is on the left.</summary>
    Front,

    /// <summary>From above; forward is up.</summary>
    Above,
}
