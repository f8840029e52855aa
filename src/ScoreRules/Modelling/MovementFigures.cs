using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Figures;

namespace ScoreRules.Modelling;

/// <summary>What is needed to draw a movement.</summary>
/// <param name="Figures">The body at the start, in the middle and at the end of the lifting phase.</param>
/// <param name="Supports">The parts of the body that rest on something, in the words of the vocabulary.</param>
/// <param name="IsBilateral">Whether both sides work at once.</param>
public sealed record MovementFigures(ImmutableArray<BodyFigure> Figures, ImmutableArray<string> Supports, bool IsBilateral)
{
    /// <summary>The figures of a movement.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="derived">What mechanics derives.</param>
    /// <returns>None when too little is stated to place a body.</returns>
    public static MovementFigures? Of(BoundRuleset ruleset, DerivedMovement derived)
    {
        if (derived.Facts is not { } facts)
        {
            return null;
        }

        var words = new MovementWords(ruleset, derived.Movement);
        return new MovementFigures(FigureSweep.Of(facts.Profile.Mechanism, RestPositions.Of(words.BodyPosition)), words.Supports, words.WorksBothSides);
    }
}
