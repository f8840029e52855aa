using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
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

    /// <summary>The rules by which many suppositions are tried at once; one instance for all, so that they are made ready once.</summary>
    public BoundRuleset OnPrinciple { get; } = Change.Trial.OnPrinciple(Judgement.Ruleset);

    /// <summary>One of the movements of the question.</summary>
    public Movement Movement(int position) => Judgement.Catalogue.Find(Question.Movements[position])!;

    /// <summary>The explanation of a movement in a target; null when it does not train it.</summary>
    public PlacementExplanation? Explain(TargetRanking ranking, Movement movement) => Judgement.Explainer!.Explain(ranking, movement);

    /// <summary>The house as the profile that the question names sees it, or else the profile it was judged for; judged again where the two differ.</summary>
    public (AskedHouse Asked, ProfileDefinition? Profile) ThroughProfile()
    {
        var named = Question.Profile is { } name ? Ruleset.Profiles.FirstOrDefault(profile => NameText.Same(profile.Name, name)) : null;
        return named is null || ReferenceEquals(named, Judgement.Profile) ? (this, Judgement.Profile) : (For(named), named);
    }

    /// <summary>The house judged again for a profile, in the same targets.</summary>
    public AskedHouse For(ProfileDefinition profile)
    {
        var again = Judge.Again(Judgement with { Profile = profile }, Ruleset, Judgement.Catalogue);
        return this with { Judgement = again, Rankings = [.. again.Rankings.Where(ranking => Rankings.Any(asked => asked.Target.Index == ranking.Target.Index))] };
    }
}
