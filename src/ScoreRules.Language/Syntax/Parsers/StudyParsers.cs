using ScoreRules.Language.Syntax.Nodes;
using Superpower;

namespace ScoreRules.Language.Syntax.Parsers;

/// <summary>Lines of the statement <c>study</c>.</summary>
internal static class StudyParsers
{
    private static readonly TokenListParser<TokenKind, (StudyVerdict Verdict, OperandSyntax? Amount)> Verdicts =
        Primitives.Phrase("about the same as").Select(_ => (StudyVerdict.AboutTheSame, (OperandSyntax?)null))
            .Or(Primitives.Phrase("within").IgnoreThen(Values.Value).Then(value => Primitives.Phrase("of").Select(_ => (StudyVerdict.Within, (OperandSyntax?)new OperandSyntax(value, null)))))
            .Or(Primitives.Phrase("too unclear to compare with").Select(_ => (StudyVerdict.Unclear, (OperandSyntax?)null)))
            .Or(Primitives.Phrase("different by region from").Select(_ => (StudyVerdict.Split, (OperandSyntax?)null)))
            .Or(Names.Until("better than").Then(word => Primitives.Phrase("better than").Select(_ => (StudyVerdict.BetterThan, (OperandSyntax?)new OperandSyntax(null, word)))));

    /// <summary>What follows <c>found</c>.</summary>
    public static TokenListParser<TokenKind, FindingSyntax> Found { get; } =
        from first in Names.Single
        from word in Primitives.Token(TokenKind.Is, "is", literal: true)
        from verdict in Verdicts
        from second in Names.Single
        from regions in Names.ForTargets
        select new FindingSyntax(first, verdict.Verdict, verdict.Amount, second, [.. regions]);

    /// <summary>What follows <c>measured</c>.</summary>
    public static TokenListParser<TokenKind, FindingSyntax> Measured { get; } =
        from first in Names.Single
        from word in Primitives.Token(TokenKind.Is, "is", literal: true)
        from value in Values.Value
        from better in Primitives.Phrase("better than")
        from second in Names.Single
        from regions in Names.ForTargets
        select new FindingSyntax(first, StudyVerdict.MeasuredBetter, new OperandSyntax(value, null), second, [.. regions]);

    /// <summary>What follows <c>design</c>.</summary>
    public static TokenListParser<TokenKind, string> Design { get; } =
        Primitives.Phrase("within person").Select(_ => "within person")
            .Or(Primitives.Phrase("between groups").Select(_ => "between groups"))
            .Or(Primitives.Phrase("observed").Select(_ => "observed"))
            .Or(Primitives.Phrase("pooled").IgnoreThen(Values.Number).Then(_ => Primitives.Phrase("studies")).Select(_ => "pooled"));
}
