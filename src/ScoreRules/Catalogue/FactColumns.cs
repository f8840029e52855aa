using System.Runtime.InteropServices;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>Columns made of facts of single rows, each made once.</summary>
internal sealed class FactColumns(RowFacts facts)
{
    private readonly Dictionary<int, NumberColumn> numbers = [];
    private readonly Dictionary<int, WordColumn> words = [];

    /// <summary>What the columns are made of.</summary>
    public RowFacts Facts => facts;

    /// <summary>The target of each row, by its index.</summary>
    public int[] TargetOfRow { get; } = [.. facts.Rows.Select(row => row.Target.Index)];

    /// <summary>Every row.</summary>
    public RowSet All { get; } = RowSet.All(facts.Rows.Length);

    /// <summary>The numbers of an attribute.</summary>
    public NumberColumn Numbers(AttributeDefinition attribute)
    {
        ref var column = ref CollectionsMarshal.GetValueRefOrAddDefault(numbers, attribute.Index, out _);
        return column ??= MakeNumbers(attribute);
    }

    /// <summary>The words of an attribute.</summary>
    public WordColumn Words(AttributeDefinition attribute)
    {
        ref var column = ref CollectionsMarshal.GetValueRefOrAddDefault(words, attribute.Index, out _);
        return column ??= MakeWords(attribute);
    }

    private NumberColumn MakeNumbers(AttributeDefinition attribute)
    {
        var count = facts.Rows.Length;
        var column = NumberColumn.Blank(count);
        for (var row = 0; row < count; row++)
        {
            var value = facts.Fact(row, attribute).Value;
            column[row] = value.IsKnown ? value.Number : double.NaN;
        }

        return new NumberColumn(count, column);
    }

    private WordColumn MakeWords(AttributeDefinition attribute)
    {
        var size = facts.Rows.Length;
        var known = new ulong[RowSet.WordsFor(size)];
        var byCode = attribute.Values.Select(_ => new ulong[known.Length]).ToArray();
        for (var row = 0; row < size; row++)
        {
            var value = facts.Fact(row, attribute).Value;
            if (value.IsKnown)
            {
                var bit = 1UL << (row % 64);
                known[row / 64] |= bit;
                Mark(value, byCode, row / 64, bit);
            }
        }

        return new WordColumn(RowSet.FromWords(size, known).Recognised(), [.. byCode.Select(words => RowSet.FromWords(size, words))]);
    }

    // A code that the attribute does not have marks nothing: a column can always be made.
    private static void Mark(FactValue value, ulong[][] byCode, int word, ulong bit)
    {
        foreach (var code in value.Codes)
        {
            if (code >= 0 && code < byCode.Length)
            {
                byCode[code][word] |= bit;
            }
        }
    }
}
