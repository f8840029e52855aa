using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A number without its sign or word: <c>worth 0 at 0</c>, <c>give 4</c>, <c>knee flexion 90</c>; or with a unit spelt otherwise: <c>30 deg</c>.</summary>
internal static class UnitAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line) =>
        line.KindBefore() == TokenKind.Number ? Spelling(draft, line) ?? (line.Wants("%") && line.Spec.Starter == "worth" ? Worths(draft, line) : Missing(draft, line)) : null;

    private static Diagnostic? Spelling(AdviceDraft draft, FailedLine line)
    {
        if (line.AtEnd || UnitSynonyms.Find(line.Token.ToStringValue()) is not { } unit)
        {
            return null;
        }

        var (number, word) = (line.SpanOf(line.Index - 1), line.SpanOf(line.Index));
        var mended = unit is "%" or "°" ? unit : $" {unit}";
        return draft.Error("SR1019", $"\"{draft.Slice(word)}\" is written {unit} here", word, "", draft.Edit($"write {draft.Slice(number)}{mended}", SourceSpan.FromBounds(number.End, word.End), mended, EditSafety.Safe));
    }

    private static Diagnostic? Missing(AdviceDraft draft, FailedLine line)
    {
        var number = line.SpanOf(line.Index - 1);
        var (sign, told) = line.Wants("%") ? ("%", "This is a share, written with %: 100% is all of it")
            : line.Wants("°") ? ("°", "An angle is written with ° or the word degrees")
            : line.Wants("points") ? (" points", "This number is in points")
            : line.Wants("parts") ? (" parts", "Shares of a target are given in parts")
            : ("", "");
        return sign.Length == 0 ? null : draft.Error("SR1019", told, number, $"add {sign.Trim()}", draft.Edit($"write {draft.Slice(number)}{sign}", new SourceSpan(number.End, 0), sign, EditSafety.Safe));
    }

    // Who forgets the first % forgets them all: one finding, one edit. 0 and 1 may be meant as nothing and full marks, so that edit is only shown.
    private static Diagnostic Worths(AdviceDraft draft, FailedLine line)
    {
        var bare = Enumerable.Range(line.Index - 1, line.Tokens.Count - line.Index + 1)
            .Where(i => line.Tokens[i].Kind == TokenKind.Number && (i == 0 || line.Tokens[i - 1].Kind == TokenKind.Comma) && (i + 1 == line.Tokens.Count || line.Tokens[i + 1].Kind != TokenKind.Percent))
            .Select(line.SpanOf).ToList();
        var place = SourceSpan.FromBounds(bare[0].Start, bare[^1].End);
        var mended = string.Concat(bare.Select((span, i) => draft.Slice(span) + "%" + (i + 1 < bare.Count ? draft.Slice(SourceSpan.FromBounds(span.End, bare[i + 1].Start)) : "")));
        var shares = bare.TrueForAll(span => Units.Parse(draft.Slice(span)) is >= 0 and <= 100) && bare.Exists(span => Units.Parse(draft.Slice(span)) > 1);
        return draft.Error("SR1019", "What a value is worth is written with %: 100% is full marks", bare[0], "add %", draft.Edit("write it with %", place, mended, shares ? EditSafety.Safe : EditSafety.Shown));
    }
}
