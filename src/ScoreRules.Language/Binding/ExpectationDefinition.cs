using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>What the author expects of the ranking.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Kind">The kind of claim.</param>
public sealed record ExpectationDefinition(StatementInfo Info, ClaimKind Kind) : BoundStatement(Info)
{
    /// <summary>The movement the claim is about, or null.</summary>
    public string? Movement { get; init; }

    /// <summary>The other movement, or null.</summary>
    public string? Other { get; init; }

    /// <summary>The targets it is claimed for; empty for all that hold the movement (or, for shares, every target).</summary>
    public ImmutableArray<TargetDefinition> Targets { get; init; } = [];

    /// <summary>Points, a count, or a share from 0 to 1.</summary>
    public double Amount { get; init; }

    /// <summary>Whether <see cref="Amount"/> is a share.</summary>
    public bool IsShare { get; init; }

    /// <summary>Tiers named.</summary>
    public ImmutableArray<TierDefinition> Tiers { get; init; } = [];

    /// <summary>The called fact or the rule named, or null.</summary>
    public string? Reference { get; init; }
}
