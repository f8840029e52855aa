using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>Edits that put <c>but</c> before a fact or take it away.</summary>
internal static class ButAdvice
{
    /// <summary>What messages call a movement that a spreadsheet declares.</summary>
    public const string RowKind = "row";

    private const string But = "but";
    private const string Guess = "at a guess";

    /// <summary>Whether the facts of a movement are cells of a spreadsheet.</summary>
    public static bool IsCell(MovementDeclaration declaration) => declaration.Info.Kind == RowKind;

    /// <summary>Advice to say <c>but</c>; with an edit where the fact has a line or a cell to itself.</summary>
    public static Suggestion PutIn(StatedFact fact, MovementDeclaration declaration)
    {
        var place = fact.Location;
        if (IsCell(declaration))
        {
            return new Suggestion($"if that is meant, write \"{But} {place.Text}\"", Insert(place.Source, place.Span.Start), EditSafety.Safe);
        }

        var before = TextBefore(place);
        return StandsAlone(place) && Trimmed(before) is "" or Guess
            ? new Suggestion("if that is meant, say \"but\"", Insert(place.Source, place.Span.Start - before.TrimStart().Length), EditSafety.Safe)
            : new Suggestion($"if that is meant, give it a line of its own: \"{But} {place.Text}\"");
    }

    /// <summary>Advice to leave <c>but</c> out; with an edit where the fact has a line or a cell to itself.</summary>
    public static Suggestion TakeOut(StatedFact fact, MovementDeclaration declaration)
    {
        const string Advice = "leave \"but\" out";
        var place = fact.Location;
        if (IsCell(declaration))
        {
            return new Suggestion(Advice, Remove(place.Source, place.Span.Start, place.Text), EditSafety.Safe);
        }

        var before = TextBefore(place);
        return StandsAlone(place) && Trimmed(before) is But or $"{But} {Guess}"
            ? new Suggestion(Advice, Remove(place.Source, place.Span.Start - before.TrimStart().Length, before.TrimStart()), EditSafety.Safe)
            : new Suggestion($"give it a line of its own without \"but\": \"{place.Text}\"");
    }

    private static string TextBefore(SourceLocation place) =>
        place.Source.Slice(SourceSpan.FromBounds(place.Source.LineSpan(place.Line).Start, place.Span.Start));

    private static string Trimmed(string words) => NameText.Key(words);

    // A comma before or behind means that the line, or the line above, holds other facts that the word would change too.
    private static bool StandsAlone(SourceLocation place)
    {
        var behind = place.Source.Slice(SourceSpan.FromBounds(place.Span.End, place.Source.LineSpan(place.Line).End));
        var above = place.Line == 1 ? "" : place.Source.Slice(place.Source.LineSpan(place.Line - 1));
        return string.IsNullOrWhiteSpace(behind) && !above.TrimEnd().EndsWith(',');
    }

    private static TextEdit Insert(SourceText source, int at) => new(source.At(new SourceSpan(at, 0)), $"{But} ");

    private static TextEdit Remove(SourceText source, int at, string text)
    {
        var rest = text[But.Length..].TrimStart();
        return new TextEdit(source.At(new SourceSpan(at, text.Length - rest.Length)), "");
    }
}
