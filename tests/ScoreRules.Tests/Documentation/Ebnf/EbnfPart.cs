namespace ScoreRules.Tests.Documentation.Ebnf;

/// <summary>A part of a rule in EBNF (ISO/IEC 14977).</summary>
internal abstract record EbnfPart
{
    /// <summary>Words or signs as they are typed.</summary>
    public sealed record Terminal(string Text) : EbnfPart;

    /// <summary>The name of another rule.</summary>
    public sealed record Reference(string Name) : EbnfPart;

    /// <summary>Something said in prose: <c>? a word ?</c>.</summary>
    public sealed record Special(string Said) : EbnfPart;

    /// <summary>Parts in a row.</summary>
    public sealed record Sequence(EbnfPart[] Parts) : EbnfPart;

    /// <summary>One of several parts.</summary>
    public sealed record Choice(EbnfPart[] Parts) : EbnfPart;

    /// <summary>A part that may be missing, or stand any number of times.</summary>
    public sealed record Optional(EbnfPart Part, bool Repeats) : EbnfPart;
}
