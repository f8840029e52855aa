namespace ScoreRules.Catalogue;

/// <summary>Names of attributes that mean something to the program itself; a house declares them like any other.</summary>
public static class WellKnownAttributes
{
    /// <summary>The muscles a coach would credit with the movement; decides who enters a sub-target.</summary>
    public const string PrimeMover = "prime mover";

    /// <summary>The kit that a movement needs, all of it.</summary>
    public const string Equipment = "equipment";

    /// <summary>Likeness to the benchmark in %: built in, worked out by the program.</summary>
    public const string Likeness = "likeness to the benchmark";
}
