using System.Collections;
using System.Numerics;

namespace ScoreRules.Catalogue;

/// <summary>A set of placement rows as bits. Does not change once made; equal by content.</summary>
public sealed class RowSet : IEquatable<RowSet>, IEnumerable<int>
{
    private readonly ulong[] words;

    private RowSet(ulong[] words, int universe)
    {
        this.words = words;
        Universe = universe;
    }

    /// <summary>How many rows there are in all.</summary>
    public int Universe { get; }

    /// <summary>How many rows are in the set.</summary>
    public int Count
    {
        get
        {
            var count = 0;
            foreach (var word in words)
            {
                count += BitOperations.PopCount(word);
            }

            return count;
        }
    }

    /// <summary>Whether no row is in the set.</summary>
    public bool IsEmpty => !words.AsSpan().ContainsAnyExcept(0UL);

    /// <summary>No row.</summary>
    public static RowSet None(int universe) => new(new ulong[(universe + 63) / 64], universe);

    /// <summary>Every row.</summary>
    public static RowSet All(int universe) => None(universe).Complement();

    /// <summary>The rows for which a question is answered yes.</summary>
    public static RowSet Where(int universe, Func<int, bool> holds)
    {
        var bits = new ulong[(universe + 63) / 64];
        for (var row = 0; row < universe; row++)
        {
            if (holds(row))
            {
                bits[row >> 6] |= 1UL << (row & 63);
            }
        }

        return new RowSet(bits, universe);
    }

    /// <summary>The rows given.</summary>
    public static RowSet Of(int universe, IEnumerable<int> rows)
    {
        var bits = new ulong[(universe + 63) / 64];
        foreach (var row in rows)
        {
            bits[row >> 6] |= 1UL << (row & 63);
        }

        return new RowSet(bits, universe);
    }

    /// <summary>Whether a row is in the set.</summary>
    public bool Contains(int row) => (words[row >> 6] & (1UL << (row & 63))) != 0;

    /// <summary>Rows in both sets.</summary>
    public RowSet And(RowSet other)
    {
        var result = new ulong[words.Length];
        for (var i = 0; i < result.Length; i++)
        {
            result[i] = words[i] & other.words[i];
        }

        return new RowSet(result, Universe);
    }

    /// <summary>Rows in either set.</summary>
    public RowSet Or(RowSet other)
    {
        var result = new ulong[words.Length];
        for (var i = 0; i < result.Length; i++)
        {
            result[i] = words[i] | other.words[i];
        }

        return new RowSet(result, Universe);
    }

    /// <summary>Rows in this set that are not in the other.</summary>
    public RowSet Without(RowSet other)
    {
        var result = new ulong[words.Length];
        for (var i = 0; i < result.Length; i++)
        {
            result[i] = words[i] & ~other.words[i];
        }

        return new RowSet(result, Universe);
    }

    /// <summary>Rows that are not in the set.</summary>
    public RowSet Complement()
    {
        var result = new ulong[words.Length];
        for (var i = 0; i < result.Length; i++)
        {
            result[i] = ~words[i];
        }

        if ((Universe & 63) != 0)
        {
            result[^1] &= (1UL << (Universe & 63)) - 1;
        }

        return new RowSet(result, Universe);
    }

    /// <inheritdoc/>
    public bool Equals(RowSet? other) => other is not null && Universe == other.Universe && words.AsSpan().SequenceEqual(other.words);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RowSet);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        hash.Add(Universe);
        foreach (var word in words)
        {
            hash.Add(word);
        }

        return hash.ToHashCode();
    }

    /// <summary>The rows, rising.</summary>
    public IEnumerator<int> GetEnumerator()
    {
        for (var i = 0; i < words.Length; i++)
        {
            for (var word = words[i]; word != 0; word &= word - 1)
            {
                yield return (i << 6) + BitOperations.TrailingZeroCount(word);
            }
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
