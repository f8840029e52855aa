namespace ScoreRules.Tiering;

/// <summary>What decides the order of a ranking: tier after limits, score, then name (movements are numbered by name).</summary>
/// <param name="Tier">Index of the tier after limits.</param>
/// <param name="Score">The score as it is compared.</param>
/// <param name="Movement">Index of the movement.</param>
/// <param name="Position">Where the placement stood before sorting.</param>
internal readonly record struct RankKey(int Tier, double Score, int Movement, int Position) : IComparable<RankKey>
{
    /// <inheritdoc/>
    public int CompareTo(RankKey other) =>
        Tier != other.Tier ? Tier.CompareTo(other.Tier)
        : Score != other.Score ? other.Score.CompareTo(Score)
        : Movement.CompareTo(other.Movement);

    /// <summary>Whether the two share a rank.</summary>
    public bool IsTiedWith(RankKey other) => Tier == other.Tier && Score == other.Score;

    /// <summary>Whether the one stands lower.</summary>
    public static bool operator <(RankKey left, RankKey right) => left.CompareTo(right) < 0;

    /// <summary>Whether the one stands higher.</summary>
    public static bool operator >(RankKey left, RankKey right) => left.CompareTo(right) > 0;

    /// <summary>Whether the one stands lower, or they are the same.</summary>
    public static bool operator <=(RankKey left, RankKey right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the one stands higher, or they are the same.</summary>
    public static bool operator >=(RankKey left, RankKey right) => left.CompareTo(right) >= 0;
}
