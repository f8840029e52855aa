using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary><c>study</c>: what a study found.</summary>
/// <param name="Info">What the statement says about itself; its name is the study's.</param>
/// <param name="Level">What it compares.</param>
/// <param name="Findings">What it found, in the order of the text.</param>
/// <param name="Outcome">What was measured.</param>
/// <param name="Strength">What it may do; <see cref="StudyStrength.Show"/> when it does not say.</param>
public sealed record StudyDefinition(StatementInfo Info, StudyLevel Level, ImmutableArray<StudyFinding> Findings, string Outcome, StudyStrength Strength) : BoundStatement(Info)
{
    /// <summary>Its name as declared.</summary>
    public string Name => Info.Name!;

    /// <summary>The attribute whose classes it compares, or null.</summary>
    public AttributeDefinition? Attribute { get; init; }

    /// <summary>Name of the criterion whose amounts it compares, or null.</summary>
    public string? Criterion { get; init; }

    /// <summary>How it compared.</summary>
    public StudyDesign Design { get; init; }

    /// <summary>How many took part; null when not said.</summary>
    public double? People { get; init; }

    /// <summary>Who took part, in the author's words.</summary>
    public string? Who { get; init; }

    /// <summary>How many weeks it lasted; null when not said.</summary>
    public double? Weeks { get; init; }

    /// <summary>How far the house believes it, 0 to 1; it multiplies the study's precision.</summary>
    public double Trust { get; init; } = 1;

    /// <summary>Why it is believed no further.</summary>
    public string? TrustBecause { get; init; }

    /// <summary>The day on which it was taken back, or null.</summary>
    public DateOnly? Withdrawn { get; init; }

    /// <summary>Why it was taken back.</summary>
    public string? WithdrawnBecause { get; init; }

    /// <summary>Whether it had been taken back on a day. Without a day it had not.</summary>
    public bool IsWithdrawn(DateOnly? day) => Withdrawn is { } end && day is { } date && date >= end;
}
