using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>A movement as declared, before likeness fills in what it inherits.</summary>
/// <param name="Info">What the statement says about itself; its name is the movement's.</param>
public sealed record MovementDeclaration(StatementInfo Info) : BoundStatement(Info)
{
    /// <summary>Its name as declared.</summary>
    public string Name => Info.Name!;

    /// <summary>Other names.</summary>
    public ImmutableArray<string> Synonyms { get; init; } = [];

    /// <summary>The movement it is like, or null.</summary>
    public string? Like { get; init; }

    /// <summary>Where <c>like</c> stands.</summary>
    public SourceLocation? LikeLocation { get; init; }

    /// <summary>Targets it trains; empty when inherited or not said.</summary>
    public ImmutableArray<TargetDefinition> Trains { get; init; } = [];

    /// <summary>Where <c>trains</c> stands; null when not said. Said without a known target means that the fault was reported.</summary>
    public SourceLocation? TrainsLocation { get; init; }

    /// <summary>Whether everything it states was understood; false when a fault in it was reported.</summary>
    public bool IsWhole { get; init; } = true;

    /// <summary>Whether an even load may stand for a cam that is not recorded.</summary>
    public bool AcceptsEvenLoad { get; init; }

    /// <summary>Facts stated about it.</summary>
    public ImmutableArray<StatedFact> Facts { get; init; } = [];

    /// <summary>What it states about joints, load and where the load comes from, in the order of the text.</summary>
    public ImmutableArray<GeometryLine> Geometry { get; init; } = [];
}
