using ScoreRules.Catalogue;

namespace ScoreRules.Inference;

/// <summary>
/// For each row: holds, does not hold, or cannot be told. Kept as the rows where it certainly holds and those where it
/// possibly holds, which makes strong Kleene logic two bit operations.
/// </summary>
/// <param name="Certain">Rows where it holds; part of <paramref name="Possible"/>.</param>
/// <param name="Possible">Rows where it holds or cannot be told.</param>
public sealed record ThreeValuedSet(RowSet Certain, RowSet Possible)
{
    /// <summary>Rows where it does not hold.</summary>
    public RowSet DidNotHold => Possible.Complement();

    /// <summary>Rows where it cannot be told.</summary>
    public RowSet CouldNotTell => Possible.Without(Certain);

    /// <summary>Holds nowhere.</summary>
    public static ThreeValuedSet None(int universe) => Exactly(RowSet.None(universe));

    /// <summary>Holds everywhere.</summary>
    public static ThreeValuedSet All(int universe) => Exactly(RowSet.All(universe));

    /// <summary>Decided everywhere.</summary>
    public static ThreeValuedSet Exactly(RowSet rows) => new(rows, rows);

    /// <summary>Both.</summary>
    public ThreeValuedSet And(ThreeValuedSet other) => new(Certain.And(other.Certain), Possible.And(other.Possible));

    /// <summary>At least one.</summary>
    public ThreeValuedSet Or(ThreeValuedSet other) => new(Certain.Or(other.Certain), Possible.Or(other.Possible));

    /// <summary>The opposite.</summary>
    public ThreeValuedSet Not() => new(Possible.Complement(), Certain.Complement());

    /// <summary>The same inside some rows; outside them it does not hold.</summary>
    public ThreeValuedSet Within(RowSet rows) => new(Certain.And(rows), Possible.And(rows));

    /// <summary>What is known of one row.</summary>
    public Verdict VerdictOf(int row) => Certain.Contains(row) ? Verdict.Held : Possible.Contains(row) ? Verdict.CouldNotTell : Verdict.DidNotHold;
}
