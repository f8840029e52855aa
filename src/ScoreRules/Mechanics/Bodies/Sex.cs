namespace ScoreRules.Mechanics.Bodies;

/// <summary>Whose segment constants are used: the source measured men and women apart.</summary>
public enum Sex
{
    /// <summary>Male constants.</summary>
    Male,

    /// <summary>Female constants.</summary>
    Female,
}
