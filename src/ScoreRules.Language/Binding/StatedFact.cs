using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>A fact as stated about a movement.</summary>
/// <param name="Attribute">What it is about.</param>
/// <param name="Value">What is stated.</param>
/// <param name="IsBut">Whether it is meant to replace an inherited one.</param>
/// <param name="IsGuess">Whether it was stated at a guess.</param>
/// <param name="Location">Where: a line of rule text or a cell of a spreadsheet.</param>
public sealed record StatedFact(AttributeDefinition Attribute, FactValue Value, bool IsBut, bool IsGuess, SourceLocation Location)
{
    /// <summary>The targets it holds for; empty for all.</summary>
    public ImmutableArray<TargetDefinition> Targets { get; init; } = [];
}
