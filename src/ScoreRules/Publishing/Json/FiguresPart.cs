using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Names and numbers of one line of an answer; what a line does not speak of is left out.</summary>
public sealed record FiguresPart
{
    /// <summary>The movement.</summary>
    public string? Movement { get; init; }

    /// <summary>Another movement it is compared with.</summary>
    public string? Other { get; init; }

    /// <summary>Its target, where the line names one of its own.</summary>
    public string? Target { get; init; }

    /// <summary>The tier then.</summary>
    public string? Tier { get; init; }

    /// <summary>The tier before.</summary>
    public string? TierBefore { get; init; }

    /// <summary>Points: a score, or a difference.</summary>
    public double? Points { get; init; }

    /// <summary>Points before, or of the other movement.</summary>
    public double? PointsBefore { get; init; }

    /// <summary>A share, from 0 to 1.</summary>
    public double? Share { get; init; }

    /// <summary>A count.</summary>
    public int? Count { get; init; }

    /// <summary>A weight as written.</summary>
    public double? WeightBefore { get; init; }

    /// <summary>The weight then, the others unchanged.</summary>
    public double? Weight { get; init; }

    /// <summary>Facts supposed to be different.</summary>
    public ImmutableArray<SupposedPart>? Changes { get; init; }

    /// <summary>Kit, by name.</summary>
    public ImmutableArray<string>? Kit { get; init; }

    /// <summary>The statement of the house behind it.</summary>
    public RulePart? Rule { get; init; }
}
