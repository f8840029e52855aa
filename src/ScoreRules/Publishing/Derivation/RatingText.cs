using System.Collections.Immutable;
using ScoreRules.Modelling;

namespace ScoreRules.Publishing.Derivation;

/// <summary>A rating beside the derived value, and a sentence where they are far apart.</summary>
internal static class RatingText
{
    public static void Print(TextBlock block, ImmutableArray<RatingComparison> comparisons, int gutter)
    {
        if (comparisons.IsEmpty)
        {
            return;
        }

        block.Blank();
        block.Line("Rated and derived");
        foreach (var comparison in comparisons)
        {
            block.Labelled("  " + comparison.Attribute.Name, $"{Beside(comparison)}{(comparison.IsApart ? " " + Apart(comparison) : "")}{Unsettled(comparison)}", gutter);
        }
    }

    /// <summary>Both numbers: "rated 3 of 4; mechanics gives 1.2 of 4 (loaded length in the long third 44 %)."</summary>
    public static string Beside(RatingComparison comparison) =>
        $"{FactText.Told(comparison.Attribute, comparison.Rated)}; mechanics gives {DeriveWords.Number(comparison.Derived, 1)} of {NumberText.Plain(comparison.Attribute.Scale.High)} ({comparison.Fact.Fact.Name} {DeriveWords.Value(comparison.Fact.Fact, comparison.Fact.Value!.Value)}{(comparison.Fact.IsAssumed ? ", even load assumed" : "")}).";

    private static string Apart(RatingComparison comparison) =>
        $"They are {DeriveWords.Number(Math.Abs(comparison.Above), 1)} steps apart: the rating is {(comparison.Above > 0 ? "higher" : "lower")}. One of the two deserves a second look.";

    private static string Unsettled(RatingComparison comparison) =>
        comparison.IsSettled ? "" : " Mechanics does not overrule a rating here: how far the arm is raised to the side is not stated.";
}
