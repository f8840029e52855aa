using System.Collections.Immutable;
using ScoreRules.Certainty;
using ScoreRules.Explanation;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Overlays;
using ScoreRules.Publishing.Vocabulary;

namespace ScoreRules.Publishing.Json;

/// <summary>Turns the explanation tree into parts of the documents.</summary>
/// <param name="explainer">Explains placements.</param>
/// <param name="ruleset">The house.</param>
/// <param name="certainty">How sure they are; null when that was not tried out.</param>
internal sealed class JsonParts(Explainer explainer, BoundRuleset ruleset, HouseCertainty? certainty = null)
{
    /// <summary>A placement; with its trail when asked.</summary>
    public PlacementPart Placement(PlacementExplanation explained, bool withTrail)
    {
        var placement = explained.Placement!;
        var benchmark = explained.Ranking.Benchmark?.Movement.Name;
        return new PlacementPart(
            placement.Row.Movement.Name, placement.Rank, placement.IsTied, placement.Tier.Name, placement.TierBeforeLimits.Name, placement.Score, placement.PrincipleScore,
            double.IsNaN(placement.Gap) ? null : placement.Gap, Sentences.Verdict(explained),
            [.. explained.Reasons.Where(reason => Tiering.Rounding.Compared(reason.Points) > 0).Select(reason => Reason(reason, benchmark))],
            [.. explained.Reasons.Where(reason => Tiering.Rounding.Compared(reason.Points) < 0).Select(reason => Reason(reason, benchmark))],
            [.. explained.Cautions.Select(Caution)],
            EvidenceParts.Of(explained),
            Certainty(explained),
            withTrail ? Trail(explained) : null);
    }

    private CertaintyPart? Certainty(PlacementExplanation explained)
    {
        if (certainty?.Of(explained.Row.Target) is not { } target || target.Of(explained.Row.Movement) is not { } sure)
        {
            return null;
        }

        var beside = target.Beside(sure).Select(other => other.Placement.Row.Movement.Name);
        return new CertaintyPart(target.Tries, sure.Tiers, sure.Ranks, sure.Low, sure.High, [.. beside], CertaintyText.Of(sure, ruleset));
    }

    /// <summary>The ranking of a target.</summary>
    public TargetPart Target(Tiering.TargetRanking ranking, Func<Catalogue.Movement, bool> wanted, bool withTrail, ImmutableArray<SetAsidePart> setAside) => new(
        ranking.Target.Name, ranking.Target.Parent, ranking.Benchmark?.Movement.Name, ranking.BenchmarkIsYardstickOnly,
        [.. ranking.Placements.Where(placement => wanted(placement.Row.Movement)).Select(placement => Placement(explainer.Explain(ranking, placement.Row.Movement)!, withTrail))],
        [.. ranking.LeftOut.Where(row => wanted(row.Row.Movement)).Select(row => new LeftOutPart(row.Row.Movement.Name, row.Rules[0].Info.Because ?? row.Rules[0].Info.Title, row.Score, Rule(row.Rules[0].Info)))],
        setAside);

    /// <summary>What a profile sets aside.</summary>
    public static ImmutableArray<SetAsidePart> SetAside(Profiles.PersonalRanking personal) =>
        [.. personal.SetAside.Select(row => new SetAsidePart(row.Row.Movement.Name, row.Kind switch { Profiles.SetAsideKind.Kit => "kit", Profiles.SetAsideKind.SoreJoint => "sore joint", _ => "avoid" }, row.Detail))];

    /// <summary>A statement.</summary>
    public static RulePart Rule(StatementInfo info) => new(info.Location.Path, info.Location.Line, info.Title, info.Because, info.Amendments.IsEmpty ? null : [.. info.Amendments.Select(Amendment)]);

    /// <summary>What was changed or dropped of a house below.</summary>
    public static AmendmentPart Amendment(Amendment amendment) => new(
        amendment.Title, amendment.Action == AmendmentAction.Dropped, amendment.House, amendment.BaseHouse, amendment.Because,
        amendment.Place.Path, amendment.Place.Line, amendment.BasePlace.Path, amendment.BasePlace.Line,
        [.. amendment.Lines.Select(line => new AmendedLinePart(line.NewText, line.New.Path, line.New.Line, line.OldText, line.Old?.Path, line.Old?.Line))]);

    /// <summary>A caution.</summary>
    public static CautionPart Caution(ShownCaution shown) => Caution(shown.Caution, shown.IsUndecided);

    /// <summary>A caution.</summary>
    public static CautionPart Caution(CautionDefinition caution, bool undecided) => new(
        caution.Text,
        caution.Severity switch { CautionSeverity.Stop => "stop", CautionSeverity.High => "high", CautionSeverity.Medium => "medium", _ => "low" },
        caution.Place switch { CautionPlace.AboveTheRanking => "above the ranking", CautionPlace.BesideTheName => "beside the name", CautionPlace.OnTheCard => "on the card", _ => "at the foot" },
        undecided, Rule(caution.Info));

    /// <summary>A finding.</summary>
    public static FindingPart Finding(Diagnostic finding) => new(
        finding.Code, DiagnosticText.Word(finding.Severity), finding.Headline, finding.Location.Path, finding.Location.Line, finding.Location.Column, finding.Location.Span.Length,
        finding.Within, finding.Notes, [.. finding.Suggestions.Select(Suggestion)]);

    /// <summary>An expectation; one that fails with the two movements behind it.</summary>
    public static TestedPart Tested(Judgement judgement, Guarding.ExpectationResult result) => new(
        result.Expectation.Info.Location.Text, result.Holds, result.Found,
        !result.Holds && ExpectationComparison.Of(judgement, result) is { } comparison ? Comparison(comparison) : null,
        Rule(result.Expectation.Info));

    /// <summary>A word.</summary>
    public static WordPart Word(WordEntry word) => new(
        word.Kind switch { WordKind.CalledFact => "called fact", WordKind.DerivedFact => "derived fact", _ => word.Kind.ToString().ToLowerInvariant() },
        word.Name, word.Meaning, word.Description, word.Values, [.. word.Steps.Select(step => new StepPart(step.Step, step.Text))], word.Synonyms, word.Location?.Path, word.Location?.Line);

    /// <summary>Something without effect yet.</summary>
    public static LaterPart Later(NotYetApplied later) => new(later.What, later.Count, later.First.Path, later.First.Line);

    private static ComparisonPart Comparison(PlacementComparison comparison) => new(
        comparison.First.Row.Target.Name, comparison.First.Row.Movement.Name, comparison.Second.Row.Movement.Name,
        comparison.First.PrincipleScore, comparison.Second.PrincipleScore,
        [.. comparison.Parts.Select(part => new ComparedPart(part.Name, part.First, part.Second, part.Apart))]);

    private static SuggestionPart Suggestion(Suggestion suggestion) => new(
        suggestion.Advice, suggestion is { Edit: not null, Safety: EditSafety.Safe }, suggestion.Edit?.Location.Line, suggestion.Edit?.Location.Column, suggestion.Edit?.Location.Span.Length, suggestion.Edit?.Replacement);

    private static ReasonPart Reason(Reason reason, string? benchmark) => new(reason.Name, reason.Points, Sentences.Reason(reason, benchmark), Rule(reason.Statement));

    private static TrailPart Trail(PlacementExplanation explained) => new(
        [.. explained.CalledFacts.Select(Called)],
        [.. explained.Criteria.Select(Criterion)],
        [.. explained.Rules.Select(rule => new RuleResultPart(Effect(rule.Effect), rule.Effect == RuleEffect.Held ? TraceText.Held(rule.Trace) : TraceText.NoEffect(rule), Rule(rule.Rule.Info)))]);

    private static CalledFactPart Called(CalledFactExplanation fact)
    {
        var way = fact.Ways.FirstOrDefault(way => way.Trace.Verdict == fact.Verdict, fact.Ways[0]);
        var text = fact.Verdict == Verdict.Held ? TraceText.Held(way.Trace) : TraceText.Failed(way.Trace.FirstDecisive());
        return new CalledFactPart(fact.Name, fact.Verdict switch { Verdict.Held => "held", Verdict.DidNotHold => "did not hold", _ => "could not tell" }, text, Rule(way.Call.Info));
    }

    private static CriterionPart Criterion(CriterionExplanation criterion) => new(
        criterion.Criterion.Name, criterion.Attribute.Name, FactText.Value(criterion.Attribute, criterion.Fact.Value), Origin(criterion.Fact.Origin),
        criterion.Fact.Location?.Path, criterion.Fact.Location?.Line, criterion.IsApart, criterion.Weight, Sentences.Basis(criterion.Basis), criterion.Worth, criterion.Points, Rule(criterion.Criterion.Info));

    private static string Origin(Catalogue.FactOrigin origin) => origin switch
    {
        Catalogue.FactOrigin.Stated => "stated",
        Catalogue.FactOrigin.Guessed => "guessed",
        Catalogue.FactOrigin.Inherited => "inherited",
        Catalogue.FactOrigin.WorkedOut => "worked out",
        Catalogue.FactOrigin.Computed => "computed",
        Catalogue.FactOrigin.Profile => "profile",
        Catalogue.FactOrigin.Derived => "derived",
        Catalogue.FactOrigin.DerivedOnAssumption => "derived, even load assumed",
        _ => "not recorded",
    };

    private static string Effect(RuleEffect effect) => effect switch
    {
        RuleEffect.Held => "held",
        RuleEffect.DidNotHold => "did not hold",
        RuleEffect.CouldNotTell => "could not tell",
        RuleEffect.Exempt => "exempt",
        _ => "overridden",
    };
}
