namespace ScoreRules.Mechanics.Facts;

/// <summary>What a fact is made of, and so what can make it missing.</summary>
public enum FactBasis
{
    /// <summary>The size of moments about the working joint, newton metres.</summary>
    Moments,

    /// <summary>The shape of the moments alone; an even load that a house accepts can stand for it.</summary>
    Shape,

    /// <summary>Shape of the moments and lengths of muscles.</summary>
    ShapeAndLengths,

    /// <summary>Lengths of muscles alone.</summary>
    Lengths,

    /// <summary>What other joints have to hold.</summary>
    Strain,

    /// <summary>How the body is held, as the movement states it.</summary>
    Support,
}
