namespace ScoreRules.Publishing.Vocabulary;

/// <summary>Kinds of word that a house's text may use, in the order in which they are listed.</summary>
public enum WordKind
{
    /// <summary>Something that can be said of a movement or a person.</summary>
    Attribute,

    /// <summary>A fact that mechanics derives from joints and load; rules read it like an attribute, and no movement states it.</summary>
    DerivedFact,

    /// <summary>A piece of kit.</summary>
    Kit,

    /// <summary>A muscle or a part of one.</summary>
    Muscle,

    /// <summary>A muscle group with a ranking of its own.</summary>
    Target,

    /// <summary>A tier of the house.</summary>
    Tier,

    /// <summary>A word of the house that stands for a number.</summary>
    Word,

    /// <summary>A fact that the house's rules call by a name.</summary>
    CalledFact,

    /// <summary>A movement.</summary>
    Movement,
}
