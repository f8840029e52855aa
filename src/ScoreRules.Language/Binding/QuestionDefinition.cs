using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary><c>ask</c>: a question to the ranking.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Kind">The kind of question.</param>
public sealed record QuestionDefinition(StatementInfo Info, QuestionKind Kind) : BoundStatement(Info)
{
    /// <summary>Declared names of the movements it is about, in the order of the question.</summary>
    public ImmutableArray<string> Movements { get; init; } = [];

    /// <summary>The tier to reach; null for the next better one.</summary>
    public TierDefinition? Tier { get; init; }

    /// <summary>The targets it is about; empty for all.</summary>
    public ImmutableArray<TargetDefinition> Targets { get; init; } = [];

    /// <summary>Kit, as codes of the attribute "equipment".</summary>
    public ImmutableArray<int> Kit { get; init; } = [];

    /// <summary>The rule, called fact or criterion it is about, by name; null for none.</summary>
    public string? Statement { get; init; }

    /// <summary>The joint, as the house names it; null for none.</summary>
    public string? Joint { get; init; }

    /// <summary>The rating of how much a movement loads <see cref="Joint"/>; null for none.</summary>
    public AttributeDefinition? Stress { get; init; }

    /// <summary>The profile through which to look, by name; null for that of the whole ranking.</summary>
    public string? Profile { get; init; }

    /// <summary>The words of the question, as its author wrote them.</summary>
    public string Words => Info.Location.Text;
}
