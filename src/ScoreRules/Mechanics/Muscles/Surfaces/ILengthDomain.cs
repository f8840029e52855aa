namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>Where a muscle part is known.</summary>
internal interface ILengthDomain
{
    /// <summary>The nearest known place, and how far off that is.</summary>
    Placement Place(in JointCoordinates at);
}
