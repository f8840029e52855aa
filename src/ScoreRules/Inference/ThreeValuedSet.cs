using ScoreRules.Catalogue;

namespace ScoreRules.Inference;

/// <summary>
/// For each row one of three answers: held, did not hold, could not tell. Joined as in strong Kleene logic: what cannot be
/// told stays so unless the other side decides alone.
/// </summary>
public sealed record ThreeValuedSet
{
    /// <summary>Keeps two sets of the same rows.</summary>
    /// <param name="certain">Rows where it holds.</param>
    /// <param name="possible">Rows where it holds or cannot be told; must contain <paramref name="certain"/>.</param>
    public ThreeValuedSet(RowSet certain, RowSet possible)
    {
        if (!ReferenceEquals(certain, possible) && !certain.IsSubsetOf(possible))
        {
            throw new ArgumentException("What is certain must be possible.", nameof(certain));
        }

        Certain = certain;
        Possible = possible;
    }

    /// <summary>Rows where it holds.</summary>
    public RowSet Certain { get; }

    /// <summary>Rows where it holds or cannot be told.</summary>
    public RowSet Possible { get; }

    /// <summary>Rows where it holds; the same as <see cref="Certain"/>.</summary>
    public RowSet Held => Certain;

    /// <summary>Rows where it cannot be told.</summary>
    public RowSet CouldNotTell => IsDecided ? RowSet.None(Certain.Size) : Possible.AndNot(Certain);

    /// <summary>Rows where it does not hold.</summary>
    public RowSet DidNotHold => Possible.Not();

    // What is decided everywhere keeps one set for both, and is joined once.
    private bool IsDecided => ReferenceEquals(Certain, Possible);

    /// <summary>Decided for every row: holds for these, does not hold for the others.</summary>
    public static ThreeValuedSet Decided(RowSet rows) => new(rows, rows);

    /// <summary>Decided where known, could not be told elsewhere.</summary>
    /// <param name="rows">Rows where it holds, as far as known.</param>
    /// <param name="known">Rows where it can be told.</param>
    public static ThreeValuedSet WhereKnown(RowSet rows, RowSet known) => known.IsAll ? Decided(rows) : new(rows.And(known), rows.Or(known.Not()));

    /// <summary>Holds nowhere.</summary>
    /// <param name="size">Number of rows.</param>
    public static ThreeValuedSet Nowhere(int size) => Decided(RowSet.None(size));

    /// <summary>Holds where both hold; does not hold where one does not.</summary>
    public ThreeValuedSet And(ThreeValuedSet other) =>
        IsDecided && other.IsDecided ? Decided(Certain.And(other.Certain)) : new(Certain.And(other.Certain), Possible.And(other.Possible));

    /// <summary>Holds where one holds; does not hold where neither does.</summary>
    public ThreeValuedSet Or(ThreeValuedSet other) =>
        IsDecided && other.IsDecided ? Decided(Certain.Or(other.Certain)) : new(Certain.Or(other.Certain), Possible.Or(other.Possible));

    /// <summary>Holds where this does not, and the other way round.</summary>
    public ThreeValuedSet Not() => IsDecided ? Decided(Certain.Not()) : new(Possible.Not(), Certain.Not());

    /// <summary>The same inside some rows; outside it does not hold.</summary>
    public ThreeValuedSet Within(RowSet rows) =>
        IsDecided ? Decided(Certain.And(rows)) : new(Certain.And(rows), Possible.And(rows));

    /// <summary>The answer for one row.</summary>
    public Verdict VerdictOf(int row) =>
        Certain.Contains(row) ? Verdict.Held : Possible.Contains(row) ? Verdict.CouldNotTell : Verdict.DidNotHold;
}
