using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A number without its sign or word: <c>worth 0 at 0</c>, <c>give 4</c>, <c>knee flexion 90</c>.</summary>
internal static class UnitAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.KindBefore() != TokenKind.Number)
        {
            return null;
        }

        var number = line.SpanOf(line.Index - 1);
        var gap = new SourceSpan(number.End, 0);
        var (sign, told) = line.Wants("%") ? ("%", "This is a share, written with %: 100% is all of it")
            : line.Wants("°") ? ("°", "An angle is written with ° or the word degrees")
            : line.Wants("points") ? (" points", "This number is in points")
            : line.Wants("parts") ? (" parts", "Shares of a target are given in parts")
            : ("", "");
        return sign.Length == 0 ? null : draft.Error("SR1019", told, number, $"add {sign.Trim()}", draft.Edit($"write {draft.Slice(number)}{sign}", gap, sign, EditSafety.Safe));
    }
}
