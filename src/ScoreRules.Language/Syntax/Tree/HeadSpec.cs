using System.Collections.Immutable;

namespace ScoreRules.Language.Syntax.Tree;

/// <summary>One kind of statement: its first line and the lines that may follow. Part of the statement table.</summary>
internal sealed class HeadSpec
{
    /// <summary>The first line: its starter is the statement's head.</summary>
    public required ClauseSpec FirstLine { get; init; }

    /// <summary>The lines that may follow.</summary>
    public ImmutableArray<ClauseUse> Lines { get; init; } = [];

    /// <summary>The line that starts with a name instead of a clause word, if the statement has one.</summary>
    public ClauseSpec? NamedLine { get; init; }

    /// <summary>Whether the first line declares a name that other statements may use.</summary>
    public bool DeclaresName { get; init; }

    /// <summary>Whether the inner lines are free text.</summary>
    public bool IsProse { get; init; }

    /// <summary>Whether the statement must say which movements it is about (<c>when</c>, <c>unless</c> or <c>always</c>).</summary>
    public bool NeedsReach { get; init; }

    /// <summary>At least one of these kinds of line must stand.</summary>
    public ImmutableArray<ClauseSpec> OneOf { get; init; } = [];

    /// <summary>Kinds of line of which only one may stand, because two of them would contradict each other, with what they tell.</summary>
    public ImmutableArray<Alternatives> OnlyOne { get; init; } = [];

    /// <summary>Whether a kind of line may stand only once in it.</summary>
    public bool IsOnce(ClauseSpec kind)
    {
        foreach (var use in Lines)
        {
            if (use.Spec == kind)
            {
                return use.Once;
            }
        }

        return false;
    }

    /// <summary>What messages call such a statement, such as "criterion".</summary>
    public string Words => FirstLine.Starter;
}
