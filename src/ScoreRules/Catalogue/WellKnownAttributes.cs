namespace ScoreRules.Catalogue;

/// <summary>Names of attributes that mean something to the program itself; a house declares them like any other.</summary>
public static class WellKnownAttributes
{
    /// <summary>The muscles a coach would credit with the movement; decides who enters a sub-target.</summary>
    public const string PrimeMover = "prime mover";

    /// <summary>The kit that a movement needs, all of it.</summary>
    public const string Equipment = "equipment";

    /// <summary>The main action, or the trade's name for it.</summary>
    public const string MovementPattern = "movement pattern";

    /// <summary>Where in the range a coach expects the load to be hardest.</summary>
    public const string PeakLoad = "peak load";

    /// <summary>Usual time until the first repetition.</summary>
    public const string SetUp = "set-up";

    /// <summary>How much the spine is pressed or bent by the load.</summary>
    public const string AxialLoad = "axial load";

    /// <summary>Likeness to the benchmark in %: built in, worked out by the program.</summary>
    public const string Likeness = "likeness to the benchmark";
}
