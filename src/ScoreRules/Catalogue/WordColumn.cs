using System.Collections.Immutable;

namespace ScoreRules.Catalogue;

/// <summary>The words of every row, as codes.</summary>
internal sealed class WordColumn
{
    /// <summary>Stands for "nobody said" among first codes.</summary>
    public const int NotKnown = -2;

    /// <summary>Stands for "looked, and there is none" among first codes.</summary>
    public const int Empty = -1;

    private readonly RowSet?[] byCode;
    private readonly RowSet none;

    private WordColumn(int[] firstCodes, RowSet known, RowSet?[] byCode)
    {
        FirstCodes = firstCodes;
        Known = known;
        this.byCode = byCode;
        none = RowSet.None(firstCodes.Length);
        IsComplete = known.Count == firstCodes.Length;
    }

    /// <summary>The first code by row, <see cref="Empty"/> or <see cref="NotKnown"/>.</summary>
    public int[] FirstCodes { get; }

    /// <summary>Rows whose words are known.</summary>
    public RowSet Known { get; }

    /// <summary>Whether the words are known in every row.</summary>
    public bool IsComplete { get; }

    /// <summary>Rows that have a word.</summary>
    public RowSet With(int code) => byCode[code] ?? none;

    /// <summary>Reads an attribute of all rows.</summary>
    public static WordColumn Read(ImmutableArray<PlacementRow> rows, int attribute, int codeCount)
    {
        var firstCodes = new int[rows.Length];
        var known = RowSet.WordsFor(rows.Length);
        var having = new ulong[codeCount][];
        for (var row = 0; row < rows.Length; row++)
        {
            var value = rows[row].Movement.Facts[attribute].Value;
            firstCodes[row] = !value.IsKnown ? NotKnown : value.Codes.IsEmpty ? Empty : value.Codes[0];
            known[row >> 6] |= (value.IsKnown ? 1UL : 0UL) << row;
            foreach (var code in value.Codes)
            {
                (having[code] ??= RowSet.WordsFor(rows.Length))[row >> 6] |= 1UL << row;
            }
        }

        return new WordColumn(firstCodes, RowSet.FromWords(known, rows.Length), [.. having.Select(words => words is null ? null : RowSet.FromWords(words, rows.Length))]);
    }

    /// <summary>The same words, all known, in every row: facts about the person.</summary>
    public static WordColumn Everywhere(int rowCount, ImmutableArray<int> codes, int codeCount)
    {
        var firstCodes = new int[rowCount];
        Array.Fill(firstCodes, codes.IsEmpty ? Empty : codes[0]);
        var all = RowSet.All(rowCount);
        return new WordColumn(firstCodes, all, [.. Enumerable.Range(0, codeCount).Select(code => codes.Contains(code) ? all : null)]);
    }
}
