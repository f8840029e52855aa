using System.Collections.Immutable;
using ScoreRules.Answers.Order;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Profiles;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Sore;

/// <summary>Finds what setting aside movements that load a sore joint costs.</summary>
internal static class SoreFinder
{
    // The word of the shared vocabulary for somebody with a sore joint: it brings the referral.
    private const string Told = "sore joint";

    /// <summary>The answer.</summary>
    public static SoreAnswer Find(AskedHouse asked)
    {
        var (question, before) = (asked.Question, asked.Judgement);
        var own = before.Profile ?? new ProfileDefinition(question.Info with { Name = question.Joint });
        var sore = own with { Sore = [.. own.Sore, (question.Joint!, question.Stress!)], Audience = WithSoreJoint(asked.Ruleset, own.Audience) };
        var after = asked.For(sore);
        var view = new ProfileView(asked.Ruleset, before.Inferred!, own);
        var personal = new ProfileView(asked.Ruleset, after.Judgement.Inferred!, sore);
        var findings = asked.Rankings.Join(after.Rankings, ranking => ranking.Target.Index, ranking => ranking.Target.Index, (old, anew) => Compare(after, view.Of(old).Ranking, personal.Of(anew)));
        return new SoreAnswer(question, question.Joint!, question.Stress!, [.. findings]) { Anew = after.Judgement };
    }

    private static ImmutableArray<int> WithSoreJoint(BoundRuleset ruleset, ImmutableArray<int> audience)
    {
        var code = ruleset.Attributes.FirstOrDefault(attribute => attribute is { IsAboutThePerson: true, IsWord: true })?.CodeOf(Told) ?? -1;
        return code < 0 || audience.Contains(code) ? audience : [.. audience.Append(code).Order()];
    }

    private static SoreFinding Compare(AskedHouse after, TargetRanking before, PersonalRanking personal)
    {
        var finding = new SoreFinding(before, personal, [], null, double.NaN);
        if (finding.KeepsFirst || finding.Left is not { } left)
        {
            return finding;
        }

        var likeness = new Likeness(after.Ruleset.Attributes);
        var cousin = personal.Ranking.Placements.MaxBy(placement => likeness.Between(placement.Row.Movement, finding.First!.Row.Movement));
        return finding with
        {
            Payers = Payers(after, personal.Whole, finding.First!.Row.Movement, left.Row.Movement),
            Cousin = cousin,
            Likeness = cousin is null ? double.NaN : likeness.Between(cousin.Row.Movement, finding.First!.Row.Movement),
        };
    }

    private static ImmutableArray<OrderReason> Payers(AskedHouse after, TargetRanking ranking, Movement old, Movement left) =>
        after.Explain(ranking, old) is { } first && after.Explain(ranking, left) is { } second ? OrderReasons.Of(first, second) : [];
}
