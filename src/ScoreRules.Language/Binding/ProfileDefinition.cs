using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>What one person or place has and wants to avoid. It filters a ranking, it never changes a score.</summary>
/// <param name="Info">What the statement says about itself; its name is the profile's.</param>
public sealed record ProfileDefinition(StatementInfo Info) : BoundStatement(Info)
{
    /// <summary>Its name as declared.</summary>
    public string Name => Info.Name!;

    /// <summary>The kit that is there, as codes of the attribute "equipment"; null when the profile sets no limit.</summary>
    public ImmutableArray<int>? Kit { get; init; }

    /// <summary>Sore joints, each with the attribute that rates how much a movement loads it.</summary>
    public ImmutableArray<(string Joint, AttributeDefinition Stress)> Sore { get; init; } = [];

    /// <summary>What the person has told, as codes of the attribute about the person; a sore joint is told as well.</summary>
    public ImmutableArray<int> Audience { get; init; } = [];

    /// <summary>Movements to avoid for now; null when none are named.</summary>
    public Condition? Avoid { get; init; }

    /// <summary>Movements to prefer; null when none are named.</summary>
    public Condition? Prefer { get; init; }
}
