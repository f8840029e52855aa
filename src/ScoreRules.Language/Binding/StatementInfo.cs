using System.Collections.Immutable;
using ScoreRules.Language.Overlays;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>What every statement may say about itself.</summary>
/// <param name="Kind">Its head, such as "criterion" or "never above".</param>
/// <param name="Name">The name it declares or was given with <c>named</c>; null without one.</param>
/// <param name="Location">Its first line.</param>
public sealed record StatementInfo(string Kind, string? Name, SourceLocation Location)
{
    /// <summary>Why, in the author's words; null when not said.</summary>
    public string? Because { get; init; }

    /// <summary>Where it was taken from, in the author's words.</summary>
    public string? Origin { get; init; }

    /// <summary>How firmly it is believed.</summary>
    public Credence Credence { get; init; }

    /// <summary>The targets and movements it is limited to; empty means all.</summary>
    public ImmutableArray<ScopeEntry> OnlyFor { get; init; } = [];

    /// <summary>The targets and movements it leaves alone.</summary>
    public ImmutableArray<ScopeEntry> ExceptFor { get; init; } = [];

    /// <summary>Names of statements that have no effect where this one holds.</summary>
    public ImmutableArray<string> Overrides { get; init; } = [];

    /// <summary>The section heading above it.</summary>
    public string? Section { get; init; }

    /// <summary>The day from which it is in force; null for always.</summary>
    public DateOnly? From { get; init; }

    /// <summary>The day from which it is no longer in force; null for never.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>What houses that build on the one it stands in changed about it, the lowest house first.</summary>
    public ImmutableArray<Amendment> Amendments { get; init; } = [];

    /// <summary>Whether it is in force on a day: <see cref="From"/> included, <see cref="Until"/> excluded. Without a day it is.</summary>
    public bool IsInForce(DateOnly? day) => Validity.Covers(From, Until, day);

    /// <summary>What messages call it.</summary>
    public string Title => Name is null ? Kind : $"{Kind} \"{Name}\"";
}
