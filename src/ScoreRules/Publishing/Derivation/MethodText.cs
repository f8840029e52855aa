using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Modelling;

namespace ScoreRules.Publishing.Derivation;

/// <summary>Whose body, which joint, which method and why, and what it takes for granted.</summary>
internal static class MethodText
{
    public static void Print(TextBlock block, BoundRuleset ruleset, DerivedMovement derived, MovementFacts facts, int gutter)
    {
        var mechanism = facts.Profile.Mechanism;
        var whose = ruleset.House?.Person is null ? "; assumed, because the house names nobody" : "; as the house says";
        var (start, end) = (mechanism.Start[mechanism.WorkingJoint], mechanism.End[mechanism.WorkingJoint]);
        block.Labelled("Whose body", DeriveWords.Person(mechanism.Person) + whose + ".", gutter);
        block.Labelled("Joint", $"{DeriveWords.Motion(mechanism.WorkingJoint)}, from {DeriveWords.Number(start, 1)}° to {DeriveWords.Number(end, 1)}°; the first that moves and that the target turns.", gutter);
        block.Labelled("Method", $"{DeriveWords.Method(mechanism.Method)}: {DeriveWords.Why(mechanism.Method)}.", gutter);
        foreach (var assumption in facts.Profile.Assumptions)
        {
            block.Labelled("", assumption, gutter);
        }

        block.Labelled("Muscles", Muscles(derived, facts), gutter);
    }

    private static string Muscles(DerivedMovement derived, MovementFacts facts)
    {
        if (facts.Target.Muscles.IsEmpty)
        {
            return derived.CoveredShare == 0 ? "too few of the target's muscles are known well enough to speak of their length." : "none of the target's known muscles crosses the working joint.";
        }

        var names = facts.Target.Muscles.Select((muscle, index) => $"{muscle.Name} {DeriveWords.Number(facts.Target.Shares[index] * 100, 0)} %");
        var left = facts.LeftOut.IsEmpty ? "" : $" Left out, because they do not cross this joint: {FactText.Join(facts.LeftOut)}.";
        var unknown = facts.Target.Missing.IsEmpty ? "" : $" Not known: {FactText.Join(facts.Target.Missing)}.";
        var off = facts.OffSagittalDegrees > 5 ? $" Some are known for an arm that moves straight forward only; here it is up to {DeriveWords.Number(facts.OffSagittalDegrees, 0)}° off." : "";
        var beyond = facts.Worst.IsClamped ? $" The posture goes {DeriveWords.Number(Math.Abs(facts.Worst.Degrees), 0)}° beyond what is known of them; there the nearest known angle stands in." : "";
        return $"{FactText.Join(names)}.{left}{unknown}{off}{beyond}";
    }
}
