using System.Collections;
using System.Numerics;

namespace ScoreRules.Catalogue;

/// <summary>A set of rows, one bit a row. It never changes; sets of the same rows are equal.</summary>
public sealed class RowSet : IEnumerable<int>, IEquatable<RowSet>
{
    private const int BitsInWord = 64;

    private static ulong[] noWords = [];

    // Bits behind the last row are always 0, so that counting and comparing need no mask.
    private readonly ulong[] words;

    // Known without counting: most rules are about every row and override nothing, and such sets need no joining.
    private readonly bool isAll;
    private readonly bool isNone;

    private RowSet(int size, ulong[] words, bool isAll = false, bool isNone = false)
    {
        Size = size;
        this.words = words;
        this.isAll = isAll;
        this.isNone = isNone;
    }

    /// <summary>Number of rows there are, in the set or not.</summary>
    public int Size { get; }

    /// <summary>Number of rows in the set.</summary>
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

    /// <summary>Whether the set is known, without counting, to hold every row.</summary>
    internal bool IsAll => isAll;

    /// <summary>No rows.</summary>
    /// <param name="size">Number of rows there are.</param>
    public static RowSet None(int size)
    {
        // All empty sets of a size share one array: there is one for every rule that overrides nothing.
        var empty = noWords;
        if (empty.Length != WordsFor(size))
        {
            noWords = empty = new ulong[WordsFor(size)];
        }

        return new RowSet(size, empty, isNone: true);
    }

    /// <summary>Every row.</summary>
    /// <param name="size">Number of rows there are.</param>
    public static RowSet All(int size)
    {
        var filled = new ulong[WordsFor(size)];
        Array.Fill(filled, ulong.MaxValue);
        return new RowSet(size, FromWords(size, filled).words, isAll: true);
    }

    /// <summary>The rows named; each from 0 to below <paramref name="size"/>.</summary>
    /// <param name="size">Number of rows there are.</param>
    /// <param name="rows">Rows, in any order.</param>
    public static RowSet Of(int size, IEnumerable<int> rows)
    {
        var filled = new ulong[WordsFor(size)];
        foreach (var row in rows)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(row, nameof(rows));
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(row, size, nameof(rows));
            filled[row / BitsInWord] |= 1UL << (row % BitsInWord);
        }

        return new RowSet(size, filled);
    }

    /// <summary>Whether a row is in the set; rows that are not there are in no set.</summary>
    public bool Contains(int row) => (uint)row < (uint)Size && (words[row / BitsInWord] >> (row % BitsInWord) & 1) != 0;

    /// <summary>Rows in both sets.</summary>
    public RowSet And(RowSet other)
    {
        CheckSize(other);
        return isAll || other.isNone ? other : isNone || other.isAll ? this : Combine<Both>(other);
    }

    /// <summary>Rows in one set or in both.</summary>
    public RowSet Or(RowSet other)
    {
        CheckSize(other);
        return isAll || other.isNone ? this : isNone || other.isAll ? other : Combine<Either>(other);
    }

    /// <summary>Rows in this set that are not in the other.</summary>
    public RowSet AndNot(RowSet other)
    {
        CheckSize(other);
        return isNone || other.isNone ? this : Combine<OnlyFirst>(other);
    }

    /// <summary>Rows that are not in the set.</summary>
    public RowSet Not() => Combine<Neither>(this);

    /// <summary>Whether every row of this set is in the other too.</summary>
    public bool IsSubsetOf(RowSet other)
    {
        CheckSize(other);
        for (var i = 0; i < words.Length; i++)
        {
            if ((words[i] & ~other.words[i]) != 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The rows, rising.</summary>
    public IEnumerator<int> GetEnumerator()
    {
        for (var i = 0; i < words.Length; i++)
        {
            for (var word = words[i]; word != 0; word &= word - 1)
            {
                yield return (i * BitsInWord) + BitOperations.TrailingZeroCount(word);
            }
        }
    }

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(RowSet? other) => other is not null && Size == other.Size && words.AsSpan().SequenceEqual(other.words);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RowSet);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        // Not System.HashCode: it is seeded anew in every process.
        var hash = (ulong)Size;
        foreach (var word in words)
        {
            hash = (BitOperations.RotateLeft(hash, 5) ^ word) * 0x9E3779B97F4A7C15UL;
        }

        return (int)(hash >> 32);
    }

    /// <summary>The rows, as in <c>0, 3, 4 of 7</c>.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{string.Join(", ", this)} of {Size}");

    /// <summary>Takes over words made elsewhere, least bit first; bits behind the last row are cleared.</summary>
    internal static RowSet FromWords(int size, ulong[] words)
    {
        if (size % BitsInWord is > 0 and var rest)
        {
            words[^1] &= ulong.MaxValue >> (BitsInWord - rest);
        }

        return new RowSet(size, words);
    }

    /// <summary>The same rows, marked as all of them when they are: joining them then costs nothing.</summary>
    internal RowSet Recognised() => Count == Size ? All(Size) : this;

    /// <summary>The bits, 64 to a word, for loops that must be fast.</summary>
    internal ReadOnlySpan<ulong> Words => words;

    /// <summary>Number of words that hold so many rows.</summary>
    internal static int WordsFor(int size) => (size + BitsInWord - 1) / BitsInWord;

    private RowSet Combine<TJoin>(RowSet other)
        where TJoin : IJoin
    {
        var joined = new ulong[words.Length];
        for (var i = 0; i < joined.Length; i++)
        {
            joined[i] = TJoin.Join(words[i], other.words[i]);
        }

        return FromWords(Size, joined);
    }

    private void CheckSize(RowSet other)
    {
        if (Size != other.Size)
        {
            throw new ArgumentException($"A set over {Size} rows cannot be joined with one over {other.Size}.", nameof(other));
        }
    }

    // Types rather than delegates, so that each loop is compiled with its own operation inside.
    private interface IJoin
    {
        static abstract ulong Join(ulong left, ulong right);
    }

    private readonly struct Both : IJoin
    {
        public static ulong Join(ulong left, ulong right) => left & right;
    }

    private readonly struct Either : IJoin
    {
        public static ulong Join(ulong left, ulong right) => left | right;
    }

    private readonly struct OnlyFirst : IJoin
    {
        public static ulong Join(ulong left, ulong right) => left & ~right;
    }

    private readonly struct Neither : IJoin
    {
        public static ulong Join(ulong left, ulong right) => ~(left | right);
    }
}
