using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>A muscle group for which movements are ranked.</summary>
/// <param name="Info">What the statement says about itself; its name is the target's.</param>
/// <param name="Muscles">Its muscles, each with its share; shares total 1.</param>
/// <param name="Benchmark">Declared name of the familiar movement that others are measured against.</param>
/// <param name="Parent">The target it is part of, or null.</param>
public sealed record TargetDefinition(StatementInfo Info, ImmutableArray<(string Muscle, double Share)> Muscles, string Benchmark, string? Parent) : BoundStatement(Info)
{
    /// <summary>Its name as declared.</summary>
    public string Name => Info.Name!;

    /// <summary>Position among the targets.</summary>
    public int Index { get; init; }
}
