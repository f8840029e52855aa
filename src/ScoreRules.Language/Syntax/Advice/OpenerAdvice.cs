using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>is at leats 3</c>, <c>is above 90 s</c>: the words were read as a name, so the line fails only behind them.</summary>
internal static class OpenerAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.Index == 0)
        {
            return null;
        }

        var verb = line.Tokens.FindLastIndex(line.Index - 1, token => token.Kind is TokenKind.Is or TokenKind.Has);
        if (verb < 0 || verb + 1 >= line.Index || !(line.IsCondition || line.Spec.Starter == "found"))
        {
            return null;
        }

        var isHas = line.Tokens[verb].Kind == TokenKind.Has;
        var words = line.Tokens.Skip(verb + 1).Take(line.Index - verb - 1).Select(token => token.ToStringValue()).ToList();
        if ((line.IsCondition ? Openers.Meant(words, isHas) : Openers.Verdict(words)) is not { } found)
        {
            return line.IsCondition && line.Failure.NameBefore(line.Index) == verb + 1 ? Unknown(draft, line, line.SpanOf(verb + 1), isHas) : null;
        }

        var place = line.SpanOf(verb + 1).Cover(line.SpanOf(verb + found.Words));
        return draft.Error("SR1002", $"\"{draft.Slice(place)}\" does not fit here", place, $"expected \"{found.Opener}\"", draft.Edit($"did you mean \"{found.Opener}\"?", place, found.Opener, EditSafety.Safe));
    }

    // No word is near: what follows shows which kind of words should stand there.
    private static Diagnostic? Unknown(AdviceDraft draft, FailedLine line, SourceSpan first, bool isHas) => line.Token.Kind switch
    {
        TokenKind.Comma when isHas => List(draft, first, "any of", "all of"),
        TokenKind.Comma => List(draft, first, "one of"),
        TokenKind.Number when !isHas => draft.Error("SR1002", $"\"{draft.Slice(first.Cover(line.SpanOf(line.Index - 1)))}\" does not fit here", first.Cover(line.SpanOf(line.Index - 1)), "expected a comparison",
            new Suggestion("before a number stands \"at least\", \"at most\", \"more than\", \"less than\", \"between\" or nothing")),
        _ => null,
    };

    private static Diagnostic List(AdviceDraft draft, SourceSpan first, params string[] openers)
    {
        var gap = first with { Length = 0 };
        return draft.Error("SR1009", "Nothing says how this list is meant", gap, $"here stands {string.Join(" or ", openers.Select(opener => $"\"{opener}\""))}",
            [.. openers.Select(opener => draft.Edit($"put \"{opener}\" in", gap, opener + " ", EditSafety.Shown)), new Suggestion("if it is one name that holds a comma, put the whole name in double quotes")]);
    }
}
