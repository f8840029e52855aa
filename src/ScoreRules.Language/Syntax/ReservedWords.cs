using System.Collections.Frozen;

namespace ScoreRules.Language.Syntax;

/// <summary>The eight words that can never stand inside a bare name.</summary>
internal static class ReservedWords
{
    private static readonly FrozenDictionary<string, TokenKind> Kinds = new Dictionary<string, TokenKind>(StringComparer.OrdinalIgnoreCase)
    {
        ["is"] = TokenKind.Is,
        ["has"] = TokenKind.Has,
        ["and"] = TokenKind.And,
        ["or"] = TokenKind.Or,
        ["not"] = TokenKind.Not,
        ["for"] = TokenKind.For,
        ["means"] = TokenKind.Means,
        ["because"] = TokenKind.Because,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, TokenKind>.AlternateLookup<ReadOnlySpan<char>> Lookup =
        Kinds.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>All eight, in the order of the manual.</summary>
    public static IReadOnlyList<string> All { get; } = ["is", "has", "and", "or", "not", "for", "means", "because"];

    /// <summary>The kind of a word: its own if reserved, <see cref="TokenKind.Word"/> otherwise.</summary>
    public static TokenKind KindOf(ReadOnlySpan<char> word) => Lookup.TryGetValue(word, out var kind) ? kind : TokenKind.Word;

    /// <summary>Whether a token is one of the eight.</summary>
    public static bool IsReserved(TokenKind kind) => kind is >= TokenKind.Is and <= TokenKind.Because;
}
