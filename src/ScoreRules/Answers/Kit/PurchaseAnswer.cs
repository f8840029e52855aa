using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Kit;

/// <summary>Which kit to buy next.</summary>
/// <param name="Question">The question.</param>
/// <param name="Profile">The profile with the kit that is there; null when none was named, or it sets no limit: then there is no answer.</param>
/// <param name="Singles">Single pieces that add something, best first.</param>
/// <param name="Second">The best second piece once the first is bought; null when none adds anything.</param>
/// <param name="Pair">The best two pieces of all; null when no two add anything.</param>
public sealed record PurchaseAnswer(QuestionDefinition Question, ProfileDefinition? Profile, ImmutableArray<Purchase> Singles, Purchase? Second, Purchase? Pair) : Answer(Question)
{
    /// <summary>The house's profiles that have a kit, by name.</summary>
    public ImmutableArray<string> Profiles { get; init; } = [];

    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Singles.Take(1).Append(Pair).OfType<Purchase>().SelectMany(purchase => purchase.Rises).Select(rise => rise.After.Row);
}
