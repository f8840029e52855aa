using System.Collections.Immutable;

namespace ScoreRules.Catalogue;

/// <summary>The words of one attribute: for each allowed word the rows that have it.</summary>
/// <param name="known">Rows whose words are known, be it that there are none.</param>
/// <param name="byCode">Rows by code of the word; only rows that are known.</param>
public sealed class WordColumn(RowSet known, ImmutableArray<RowSet> byCode)
{
    private readonly RowSet none = RowSet.None(known.Size);

    /// <summary>Rows whose words are known, be it that there are none.</summary>
    public RowSet Known { get; } = known;

    /// <summary>Rows that have a word; none for a code that the attribute does not have.</summary>
    public RowSet Having(int code) => code >= 0 && code < byCode.Length ? byCode[code] : none;

    /// <summary>Rows that have at least one of the words.</summary>
    public RowSet HavingAny(ImmutableArray<int> codes) => codes.Aggregate(none, (rows, code) => rows.Or(Having(code)));

    /// <summary>Rows that are known and have each of the words.</summary>
    public RowSet HavingAll(ImmutableArray<int> codes) => codes.Aggregate(Known, (rows, code) => rows.And(Having(code)));
}
