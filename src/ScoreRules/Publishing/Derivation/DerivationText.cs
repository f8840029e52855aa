using System.Collections.Immutable;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Modelling;

namespace ScoreRules.Publishing.Derivation;

/// <summary>
/// What mechanics derives for a movement, for a terminal: cautions first, then whose body and which method, the curves, the facts with
/// interval and grade, what stands beside a rating, where each number comes from, and what is missing.
/// </summary>
public sealed class DerivationText(Judgement judgement)
{
    private const int Gutter = 16;

    /// <summary>The page of a movement and a target.</summary>
    /// <param name="derived">What mechanics derives, with intervals.</param>
    public string Print(DerivedMovement derived)
    {
        var block = new TextBlock();
        Heading(block, derived);
        Cautions(block, derived);
        if (derived.Facts is { } facts)
        {
            Whole(block, derived, facts);
        }
        else
        {
            block.Labelled("Missing", MissingText.Model(derived), Gutter);
        }

        block.Blank();
        AtTheFoot(block, derived);
        block.Wrapped(Sentences.Education);
        return block.ToString();
    }

    /// <summary>Why nothing can be derived for a movement, as a sentence.</summary>
    /// <param name="derived">What mechanics derives.</param>
    public static string WhyNothing(DerivedMovement derived) => MissingText.Model(derived);

    private static void Heading(TextBlock block, DerivedMovement derived)
    {
        var (name, target) = (Sentences.Capital(derived.Movement.Name), $"{derived.Target.Name}, by mechanics");
        block.Line(TextBlock.Pad(name, Math.Max(78 - target.Length, name.Length + 2)) + target);
        block.Blank();
    }

    private void Whole(TextBlock block, DerivedMovement derived, MovementFacts facts)
    {
        MethodText.Print(block, judgement.Ruleset, derived, facts, Gutter);
        CurveText.Print(block, derived, facts);
        FactTableText.Print(block, facts, MuscleFacts.Of(facts, judgement.Ruleset.House is { AcceptsEvenLoad: true } || derived.Movement.AcceptsEvenLoad));
        RatingText.Print(block, RatingComparison.Of(judgement.Ruleset, derived), Gutter);
        InputText.Print(block, facts);
        MissingText.Print(block, facts);
    }

    private void Cautions(TextBlock block, DerivedMovement derived)
    {
        var first = true;
        foreach (var shown in Shown(derived).Where(caution => caution.Caution.Place != CautionPlace.AtTheFoot))
        {
            block.Labelled(first ? "First" : "", shown.Caution.Text + (shown.IsUndecided ? " (Could not be told from the facts; shown to be careful.)" : ""), Gutter);
            first = false;
        }

        if (!first)
        {
            block.Blank();
        }
    }

    private void AtTheFoot(TextBlock block, DerivedMovement derived)
    {
        foreach (var shown in Shown(derived).Where(caution => caution.Caution.Place == CautionPlace.AtTheFoot))
        {
            block.Labelled(shown.Caution.Severity == CautionSeverity.Stop ? "Stop" : "Caution", shown.Caution.Text, Gutter);
        }
    }

    private ImmutableArray<ShownCaution> Shown(DerivedMovement derived) =>
        judgement.Inferred?.Facts.Rows.FirstOrDefault(row => row.Movement.Index == derived.Movement.Index && row.Target.Index == derived.Target.Index) is { } row
            ? judgement.Explainer!.CautionsOf(row)
            : [];
}
