using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers;

/// <summary>A judged house with a question put to it, and the targets it is asked about.</summary>
/// <param name="Judgement">The house, judged without errors.</param>
/// <param name="Question">The question; its names are those of the house.</param>
/// <param name="Rankings">The rankings of the targets it is asked about.</param>
internal sealed record AskedHouse(Judgement Judgement, QuestionDefinition Question, ImmutableArray<TargetRanking> Rankings)
{
    /// <summary>The house's rules.</summary>
    public BoundRuleset Ruleset => Judgement.Ruleset;

    /// <summary>One of the movements of the question.</summary>
    public Movement Movement(int position) => Judgement.Catalogue.Find(Question.Movements[position])!;

    /// <summary>The explanation of a movement in a target; null when it does not train it.</summary>
    public PlacementExplanation? Explain(TargetRanking ranking, Movement movement) => Judgement.Explainer!.Explain(ranking, movement);
}
