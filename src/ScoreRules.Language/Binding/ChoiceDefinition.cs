using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>A few movements that go together, as a house asks for them.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Count">How many at most, from 1.</param>
/// <param name="Targets">For which targets; at least one.</param>
public sealed record ChoiceDefinition(StatementInfo Info, int Count, ImmutableArray<TargetDefinition> Targets) : BoundStatement(Info)
{
    /// <summary>Called facts of which each must hold for one of them at least.</summary>
    public ImmutableArray<string> Cover { get; init; } = [];

    /// <summary>So many at least must meet a condition.</summary>
    public ImmutableArray<ChoiceInclude> Includes { get; init; } = [];

    /// <summary>Numbers whose sum is limited, each with the most it may be, in its own unit.</summary>
    public ImmutableArray<(AttributeDefinition Attribute, double Most)> Totals { get; init; } = [];

    /// <summary>How alike two of them may be, 0 to 1; null when not limited.</summary>
    public double? MostAlike { get; init; }

    /// <summary>Two of them may not differ by these attributes alone; one list a line.</summary>
    public ImmutableArray<ImmutableArray<AttributeDefinition>> MoreThan { get; init; } = [];

    /// <summary>The profile it is for, by its declared name; null for nobody in particular.</summary>
    public string? Profile { get; init; }
}
