using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>One line of what a study found.</summary>
/// <param name="First">The side that is spoken of first: a movement by its declared name, a word of the attribute, or "more" or "less".</param>
/// <param name="Verdict">What was found of it.</param>
/// <param name="Second">The other side.</param>
/// <param name="Location">Where the line stands.</param>
public sealed record StudyFinding(string First, StudyVerdict Verdict, string Second, SourceLocation Location)
{
    /// <summary>The house's word of strength, such as "clearly"; null where a number is told.</summary>
    public string? Word { get; init; }

    /// <summary>The number: the least difference of a word, the measured one, or how close together; null where the verdict has none.</summary>
    public UncertainNumber? Amount { get; init; }

    /// <summary>Its unit: points, sd or %.</summary>
    public string? Unit { get; init; }

    /// <summary>Muscles the line speaks of, those of targets it names included; empty when it speaks of the whole.</summary>
    public ImmutableArray<string> Regions { get; init; } = [];
}
