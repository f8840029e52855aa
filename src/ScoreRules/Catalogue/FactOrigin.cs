namespace ScoreRules.Catalogue;

/// <summary>Where a fact comes from.</summary>
public enum FactOrigin
{
    /// <summary>Nobody said; the value is unknown.</summary>
    NotSaid,

    /// <summary>Stated for this movement.</summary>
    Stated,

    /// <summary>Stated for this movement at a guess.</summary>
    Guessed,

    /// <summary>Taken over from the movement it is like.</summary>
    Inherited,

    /// <summary>Worked out by a recipe.</summary>
    WorkedOut,

    /// <summary>Computed by the program (likeness to the benchmark).</summary>
    Computed,

    /// <summary>Derived by mechanics from posture and resistance.</summary>
    Derived,

    /// <summary>Derived by mechanics, with an even load assumed for a machine whose cam is not recorded.</summary>
    DerivedOnAssumption,

    /// <summary>Taken from the person's profile.</summary>
    Profile,
}
