using ScoreRules.Mechanics.Facts;
using ScoreRules.Modelling;

namespace ScoreRules.Publishing.Derivation;

/// <summary>What is missing, what stating it would give, and which facts wait for it.</summary>
internal static class MissingText
{
    public static void Print(TextBlock block, MovementFacts facts)
    {
        var waiting = facts.Values.Where(value => value.Value is null).ToList();
        if (waiting.Count == 0 && facts.Profile.Missing.IsEmpty)
        {
            return;
        }

        block.Blank();
        block.Line("What is missing");
        foreach (var input in facts.Profile.Missing.Where(input => !input.StopsTheCurve))
        {
            block.Wrapped($"{input.Name}, assumed: {input.Gain}", 2);
        }

        foreach (var reason in waiting.GroupBy(value => string.Join(' ', value.Missing), StringComparer.Ordinal))
        {
            block.Wrapped($"{reason.Key} No value for: {FactText.Join(reason.Select(value => value.Fact.Name))}.", 2);
        }
    }

    /// <summary>Why a movement cannot be seen as mechanics at all.</summary>
    public static string Model(DerivedMovement derived) => derived.Movement.Geometry.IsEmpty
        ? $"No joint angles are stated for \"{derived.Movement.Name}\", so mechanics says nothing about it. \"moves\" and \"keeps\" lines in the movement would change that."
        : $"Mechanics says nothing about \"{derived.Movement.Name}\" yet: {FactText.Join(derived.Lacks)} is not stated.";
}
