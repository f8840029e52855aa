using System.Collections.Immutable;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Mechanics.Facts;

/// <summary>A fact about one movement and one target, with where it comes from.</summary>
/// <param name="Fact">Which.</param>
/// <param name="Value">In the unit of the fact; none when it cannot be worked out.</param>
/// <param name="Interval">How far it moves when one input is off; none without a value or when intervals were not asked for.</param>
/// <param name="Grade">Of the least reliable muscle; none for facts without muscles.</param>
/// <param name="IsAssumed">Whether an even load was assumed, because the house accepts it.</param>
/// <param name="Inputs">The numbers that made it, with their origin.</param>
/// <param name="Missing">What would have to be stated or mended, when there is no value; a sentence each.</param>
public sealed record FactValue(
    DerivedFact Fact,
    double? Value,
    FactInterval? Interval,
    Reliability? Grade,
    bool IsAssumed,
    ImmutableArray<InputUse> Inputs,
    ImmutableArray<string> Missing)
{
    /// <summary>Whether two movements may be ordered on it: not where muscles are good for a sign only.</summary>
    public bool CanOrder => Value is not null && Grade != Reliability.SignOnly;
}
