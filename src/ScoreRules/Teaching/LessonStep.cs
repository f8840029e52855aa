using System.Collections.Immutable;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;

namespace ScoreRules.Teaching;

/// <summary>One movement of a lesson, told by what sets it apart from the movement most like it among those already told.</summary>
/// <param name="Number">Its place in the order of telling, from 1.</param>
/// <param name="Explained">Everything behind its placement.</param>
/// <param name="Cousin">The step it is told beside; null for the first.</param>
/// <param name="Likeness">Likeness to that cousin, 0 to 1; NaN where nothing is known of both.</param>
public sealed record LessonStep(int Number, PlacementExplanation Explained, LessonStep? Cousin, double Likeness)
{
    /// <summary>What gives it other points than its cousin, largest first; their sum is <see cref="Difference"/>.</summary>
    public ImmutableArray<Reason> Parts { get; init; } = [];

    /// <summary>Facts that count for likeness and differ, besides those that a part names: the cousin's on the right.</summary>
    public ImmutableArray<(AttributeDefinition Attribute, FactValue Own, FactValue Cousins)> Changes { get; init; } = [];

    /// <summary>Name of the movement.</summary>
    public string Movement => Explained.Row.Movement.Name;

    /// <summary>Its score in points.</summary>
    public double Score => Explained.Placement?.Score ?? Explained.LeftOut?.Score ?? Explained.PrincipleScore;

    /// <summary>Points above (or, negative, below) its cousin; 0 for the first.</summary>
    public double Difference => Cousin is null ? 0 : Score - Cousin.Score;

    /// <summary>How many steps it is from the first.</summary>
    public int Depth => Cousin is null ? 0 : Cousin.Depth + 1;
}
