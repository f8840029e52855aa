using CsCheck;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Syntax;

/// <summary>Texts that nobody would write, and texts that somebody nearly wrote: a sound house with a few changes at random.</summary>
internal static class BrokenText
{
    private static readonly string[] Pieces =
    [
        .. StatementTable.All.Select(head => $"\n{head.Words} "),
        .. StatementTable.Own.SelectMany(head => head.Lines).Select(use => $"\n  {use.Spec.Starter} ").Distinct(),
        "give 4 points", "  worth 0% at 0", "  counts 4", "\n  when stretch is at least 3", "is ", "has ", "at least ", "one of ", "better than ", "not ", "for ", "and ", "or ", "means ", "stretch ", "grip ", "3 ", "2,5", "15s",
        "1-2", "10 points ", "-", "%", "°", ",", ", ", "\"", "“", "”", "'", "(", ")", ">=", "=", "#", "\t", " ", "  ", "\u00A0", "\u200B", "\uFEFF", "е", "é", "e\u0301",
        "長い", "👩\u200D👧", "\uD83D", "\uDC00", "\0", "\u2028", "\n", "\n", "\n\n", "\r\n", "\r", "4 May 2031", "999999999999999999999999", ".5", "½",
    ];

    private static readonly Gen<string> Piece = Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index]);

    private static readonly string House = Repository.Read("rulesets", "longreach", "house.rules").ReplaceLineEndings("\n");

    /// <summary>Pieces of rule text and of much else, in any order.</summary>
    public static Gen<string> Anything { get; } =
        Gen.OneOf(Piece.Array[0, 80].Select(string.Concat), Gen.String[Gen.Char, 0, 60]);

    /// <summary>The Longreach house after one to four changes.</summary>
    public static Gen<string> NearlyAHouse { get; } =
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Int[0, 5], Piece).Array[1, 4].Select(changes => changes.Aggregate(House, Change));

    private static string Change(string text, (int Place, int Kind, string Piece) change)
    {
        var at = change.Place % (text.Length + 1);
        var end = Math.Min(text.Length, at + 1 + (change.Place % 40));
        return change.Kind switch
        {
            0 => text.Insert(at, change.Piece),
            1 => text.Remove(at, Math.Min(1, text.Length - at)),
            2 => text.Remove(at, end - at),
            3 => text[..at] + change.Piece + text[end..],
            4 => text.Insert(at, text[at..end]),
            _ => text.Insert(at, "\n"),
        };
    }
}
