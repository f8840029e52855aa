using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Choosing;

/// <summary>A few movements that are wanted.</summary>
/// <param name="Targets">For which targets; at least one.</param>
/// <param name="Count">How many at most; null for the fewest that keep every limit.</param>
public sealed record ChoiceRequest(ImmutableArray<TargetDefinition> Targets, int? Count)
{
    /// <summary>Called facts of which each must hold for one of them.</summary>
    public ImmutableArray<string> Cover { get; init; } = [];

    /// <summary>So many at least must meet a condition.</summary>
    public ImmutableArray<ChoiceInclude> Includes { get; init; } = [];

    /// <summary>Sums and the most that each may be.</summary>
    public ImmutableArray<(AttributeDefinition Attribute, double Most)> Totals { get; init; } = [];

    /// <summary>How alike two may be, 0 to 1; null when not limited.</summary>
    public double? MostAlike { get; init; }

    /// <summary>Two may not differ by these alone; one list a limit.</summary>
    public ImmutableArray<ImmutableArray<AttributeDefinition>> MoreThan { get; init; } = [];

    /// <summary>Whether it is for a whole week: every target and every major muscle group.</summary>
    public bool IsWeek { get; init; }

    /// <summary>The statement that asks for it; null when it was asked otherwise.</summary>
    public ChoiceDefinition? Statement { get; init; }

    /// <summary>What a statement asks for.</summary>
    public static ChoiceRequest Of(ChoiceDefinition choice) => new(choice.Targets, choice.Count)
    {
        Cover = choice.Cover,
        Includes = choice.Includes,
        Totals = choice.Totals,
        MostAlike = choice.MostAlike,
        MoreThan = choice.MoreThan,
        Statement = choice,
    };
}
