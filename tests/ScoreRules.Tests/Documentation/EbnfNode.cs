namespace ScoreRules.Tests.Documentation;

/// <summary>A piece of a rule in EBNF.</summary>
internal abstract record EbnfNode;

#pragma warning disable MA0048, SA1402 // the kinds of one small tree
internal sealed record EbnfTerminal(string Text) : EbnfNode;

internal sealed record EbnfSpecial(string Described) : EbnfNode;

internal sealed record EbnfReference(string Name) : EbnfNode;

internal sealed record EbnfOptional(EbnfNode Inner) : EbnfNode;

internal sealed record EbnfRepeated(EbnfNode Inner) : EbnfNode;

internal sealed record EbnfSequence(IReadOnlyList<EbnfNode> Parts) : EbnfNode;

internal sealed record EbnfChoice(IReadOnlyList<EbnfNode> Parts) : EbnfNode;
#pragma warning restore MA0048, SA1402
