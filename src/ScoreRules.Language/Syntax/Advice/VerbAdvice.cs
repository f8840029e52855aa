using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A forgotten "is", "has" or "means": <c>external support at least 3</c>, <c>expect A above B</c>, <c>grip neutral</c>.</summary>
internal static class VerbAdvice
{
    private const int FurthestBack = 12;

    private static readonly string[] AfterIs =
    [
        "at least", "at most", "more than", "less than", "between", "one of", "none of", "other than", "no higher than", "no lower than", "left out",
        "above", "within", "called", "better than", "about the same as", "too unclear to compare with", "different by region from",
    ];

    private static readonly string[] AfterHas = ["any of", "all of"];
    private static readonly string[] AfterMeans = ["at least", "within"];

    public static Diagnostic? Find(AdviceDraft draft, FailedLine line) =>
        line.Wants("means") ? Means(draft, line)
            : line.Wants("is") ? Opened(draft, line) ?? BeforeNumber(draft, line) ?? InFact(draft, line)
            : null;

    private static Diagnostic? Means(AdviceDraft draft, FailedLine line)
    {
        if (line.Token.Kind == TokenKind.Is)
        {
            var place = line.SpanOf(line.Index);
            return draft.Error("SR1022", "A word of the house is defined with \"means\"", place, "", draft.Edit("write \"means\"", place, "means", EditSafety.Safe));
        }

        var at = Place(line, AfterMeans, out var opener);
        return at >= 0 ? Insert(draft, line, at, "means", opener!, EditSafety.Safe)
            : line.Token.Kind == TokenKind.Number ? Insert(draft, line, line.Index, "means", line.Token.ToStringValue(), EditSafety.Safe)
            : null;
    }

    private static Diagnostic? Opened(AdviceDraft draft, FailedLine line)
    {
        var at = Place(line, AfterHas, out var opener);
        if (at >= 0)
        {
            return Insert(draft, line, at, "has", opener!, EditSafety.Safe);
        }

        at = Place(line, AfterIs, out opener);
        if (at < 0)
        {
            return null;
        }

        // "every target at least 1 in Keep" counts movements; "A at least 5 points above B" compares two.
        var counts = line.Spec.Starter == "expect" && opener is "at least" or "at most" && line.Tokens.Exists(token => token.Span.EqualsValueIgnoreCase("in"));
        return opener == "better than" ? BeforeStrength(draft, line, at) : Insert(draft, line, at, counts ? "has" : "is", opener!, EditSafety.Safe);
    }

    // The strength word before "better than" is one word, or two that begin with "a".
    private static Diagnostic BeforeStrength(AdviceDraft draft, FailedLine line, int at)
    {
        var first = at > 1 && !line.Tokens[at - 2].Span.EqualsValueIgnoreCase("a") ? at - 1 : at - 2;
        first = Math.Max(first, 1);
        return Insert(draft, line, first, "is", draft.Slice(line.SpanOf(first).Cover(line.SpanOf(at + 1))), EditSafety.Shown);
    }

    private static Diagnostic? BeforeNumber(AdviceDraft draft, FailedLine line)
    {
        var rest = line.Tokens.Skip(line.Index).TakeWhile(token => token.Kind != TokenKind.Comma);
        return line.Token.Kind == TokenKind.Number && line.Index > 0 && rest.All(token => token.Kind is not (TokenKind.Is or TokenKind.Has))
            ? Insert(draft, line, line.Index, "is", draft.Slice(line.SpanOf(line.Index)), EditSafety.Safe)
            : null;
    }

    private static Diagnostic? InFact(AdviceDraft draft, FailedLine line)
    {
        if (!line.Wants("has") || line.Spec.Starter == "expect" || !(line.AtEnd || line.Token.Kind == TokenKind.Comma) || line.Failure.NameBefore(line.Index) is not { } first)
        {
            return null;
        }

        var last = line.Index - 1;
        var place = line.SpanOf(first).Cover(line.SpanOf(last));
        var gap = SourceSpan.FromBounds(line.SpanOf(first).End, line.SpanOf(last).Start);
        Suggestion[] advice = last == first + 1 && line.Tokens[first].Kind == TokenKind.Word
            ? [draft.Edit("write \"is\" if it has this one value", gap, " is ", EditSafety.Shown), draft.Edit("write \"has\" if it may have several", gap, " has ", EditSafety.Shown)]
            : [new Suggestion("write \"is\" before a single value, \"has\" before a list")];
        return draft.Error("SR1022", $"\"is\" or \"has\" is missing in \"{draft.Slice(place)}\"", place, "in here", advice);
    }

    private static Diagnostic Insert(AdviceDraft draft, FailedLine line, int at, string verb, string before, EditSafety safety)
    {
        if (at > 1 && line.Tokens[at - 1].Kind == TokenKind.Word && Mistyped(draft.Slice(line.SpanOf(at - 1)), verb) is { } meant)
        {
            var slip = line.SpanOf(at - 1);
            return draft.Error("SR1002", $"\"{draft.Slice(slip)}\" does not fit here", slip, $"expected \"{meant}\"", draft.Edit($"did you mean \"{meant}\"?", slip, meant, EditSafety.Safe));
        }

        var gap = new SourceSpan(line.SpanOf(at).Start, 0);
        return draft.Error("SR1022", $"\"{verb}\" is missing before \"{before}\"", gap, "here", draft.Edit($"put \"{verb}\" in", gap, $"{verb} ", safety));
    }

    private static string? Mistyped(string word, string verb) => verb == "means"
        ? NameSuggester.Nearest(word, [verb]).IsEmpty ? null : verb
        : VerbSlip.Meant(word);

    // Looks back from where the line failed, because the words after a forgotten "is" were read as part of the name.
    private static int Place(FailedLine line, string[] openers, out string? opener)
    {
        for (var i = Math.Min(line.Index, line.Tokens.Count - 1); i > 0 && i > line.Index - FurthestBack; i--)
        {
            opener = Array.Find(openers, words => Opens(line, i, words));
            if (opener is not null)
            {
                return i;
            }
        }

        opener = null;
        return -1;
    }

    private static bool Opens(FailedLine line, int index, string opener)
    {
        var words = opener.Split(' ');
        return index + words.Length <= line.Tokens.Count
            && Enumerable.Range(0, words.Length).All(i => line.Tokens[index + i].Span.EqualsValueIgnoreCase(words[i]))
            && line.Tokens.Take(index).Reverse().TakeWhile(token => token.Kind is not (TokenKind.And or TokenKind.Or)).All(token => token.Kind != TokenKind.Is || index > line.Index);
    }
}
