using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using ScoreRules.Catalogue;
using ScoreRules.Evidence;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Modelling;
using ScoreRules.Scoring;
using ScoreRules.Tiering;

namespace ScoreRules.Explanation;

/// <summary>Builds the tree behind a placement from the columns of the engine; nothing is worded here.</summary>
/// <param name="ruleset">The house.</param>
/// <param name="inferred">What the rules found.</param>
/// <param name="scores">What it scores.</param>
/// <param name="derived">What mechanics derives, for houses whose criteria read it.</param>
public sealed class Explainer(BoundRuleset ruleset, InferenceResult inferred, ScoreTable scores, DerivedFactSource? derived = null)
{
    private readonly ImmutableArray<(ConditionalStatement Rule, RuleOutcome Outcome)> rules =
    [
        .. ruleset.Awards.Concat<ConditionalStatement>(ruleset.CancelOuts).Concat(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Cautions)
            .OrderBy(rule => rule.Info.Location, Comparer<SourceLocation>.Create(SourceLocation.Compare))
            .Select(rule => (rule, inferred.Outcome(rule))),
    ];

    private readonly ImmutableArray<(AwardDefinition Award, RowSet Rows)> awards = [.. ruleset.Awards.Select(award => (award, inferred.Outcome(award).Effective))];
    private readonly ImmutableArray<(CautionDefinition Caution, RuleOutcome Outcome)> cautions = [.. ruleset.Cautions.Select(caution => (caution, inferred.Outcome(caution)))];
    private readonly ImmutableArray<(string Name, ThreeValuedSet Rows, ImmutableArray<CallDefinition> Calls)> calledFacts =
        [.. ruleset.CalledFacts.Select(fact => (fact, inferred.Concept(fact), inferred.CallsOf(fact).ToImmutableArray()))];

    private readonly ReasonRule worthTelling = new(ruleset);
    private readonly ConditionalWeakTable<TargetRanking, PlacementIndex> indexes = [];

    /// <summary>What studies did; null where none was asked.</summary>
    public EvidenceTable? Evidence { get; init; }

    /// <summary>The rankings as they would be without any study or judgement by another movement.</summary>
    public ImmutableArray<TargetRanking> OnPrinciple { get; init; } = [];

    /// <summary>The explanation of a movement in a target; null when it is not ranked there.</summary>
    public PlacementExplanation? Explain(TargetRanking ranking, Movement movement)
    {
        var (placement, leftOut) = IndexOf(ranking).Find(movement);
        return (placement?.Row ?? leftOut?.Row) is { } row ? Explain(ranking, row, placement, leftOut) : null;
    }

    private PlacementIndex IndexOf(TargetRanking ranking) => indexes.GetValue(ranking, made => new PlacementIndex(made));

    /// <summary>Cautions shown for a row, most serious first.</summary>
    public ImmutableArray<ShownCaution> CautionsOf(PlacementRow row) =>
    [
        .. cautions
            .Where(pair => pair.Outcome.Effective.Contains(row.Index) || pair.Outcome.CouldNotTell.Contains(row.Index))
            .OrderByDescending(pair => pair.Caution.Severity).ThenBy(pair => pair.Caution.Text, StringComparer.Ordinal)
            .Select(pair => new ShownCaution(pair.Caution, !pair.Outcome.Effective.Contains(row.Index))),
    ];

    private PlacementExplanation Explain(TargetRanking ranking, PlacementRow row, Placement? placement, LeftOutRow? leftOut)
    {
        var criteria = scores.Criteria.Select(column => Criterion(column, row, ranking.Benchmark)).OfType<CriterionExplanation>().ToImmutableArray();
        var explained = new PlacementExplanation(row, ranking, placement, leftOut)
        {
            Cautions = CautionsOf(row),
            CalledFacts = [.. calledFacts.Select(fact => Called(fact.Name, fact.Rows, fact.Calls, row.Index))],
            Criteria = criteria,
            CriteriaPoints = scores.CriteriaPoints[row.Index],
            WeightTotal = scores.WeightTotals[row.Index],
            AwardPoints = scores.AwardPoints[row.Index],
            PrincipleScore = scores.Principle[row.Index],
            Evidence = Evidence?.Of(row),
            BenchmarkMoved = ranking.Benchmark is { } benchmark ? Evidence?.Of(benchmark) : null,
            OnPrinciple = OnPrinciple.FirstOrDefault(alone => alone.Target.Index == row.Target.Index) is { } alone ? IndexOf(alone).Find(row.Movement).Placement : null,
            Rules = [.. rules.Select(rule => Rule(rule.Rule, rule.Outcome, row))],
        };
        return WithReasons(explained, ranking.Benchmark);
    }

    private PlacementExplanation WithReasons(PlacementExplanation explained, PlacementRow? benchmark)
    {
        var given = awards.Select(award => Award(award.Award, award.Rows, explained.Row, benchmark)).OfType<Reason>();
        var reasons = explained.Criteria.Select(criterion => Difference(criterion, benchmark)).Concat(given).Concat(EvidenceReasons.Of(explained))
            .OrderByDescending(reason => Math.Abs(Rounding.Compared(reason.Points))).ThenBy(reason => reason.Name, StringComparer.Ordinal).ToImmutableArray();
        return explained with { Reasons = reasons, For = worthTelling.For(reasons), Against = worthTelling.Against(reasons) };
    }

    private static Reason Difference(CriterionExplanation criterion, PlacementRow? benchmark) =>
        new(criterion.Criterion.Name, benchmark is null ? criterion.Points : criterion.Difference, criterion.Criterion.Info, criterion);

    private static Reason? Award(AwardDefinition award, RowSet effective, PlacementRow row, PlacementRow? benchmark)
    {
        var (own, others) = (effective.Contains(row.Index), benchmark is not null && effective.Contains(benchmark.Index));
        return own == others ? null : new Reason(award.Info.Name ?? award.Info.Kind, own ? award.Points : -award.Points, award.Info, null, others);
    }

    private CriterionExplanation? Criterion(CriterionColumn column, PlacementRow row, PlacementRow? benchmark)
    {
        if (double.IsNaN(column.Worth[row.Index]) || column.Attributes[row.Target.Index] is not { } attribute)
        {
            return null;
        }

        var weight = column.Weights[row.Target.Index];
        var total = scores.WeightTotals[row.Index];
        return new CriterionExplanation(column.Criterion, attribute, inferred.Facts.Fact(row.Index, attribute), weight, weight / total, column.Worth[row.Index], scores.PointsOf(column, row))
        {
            Basis = ScopeResolution.For(row.Target, column.Criterion.Weights, line => line.Targets)?.Basis,
            BenchmarkFact = benchmark is null ? null : inferred.Facts.Fact(benchmark.Index, attribute),
            IsApart = benchmark is null || !attribute.IsDerived ? null : derived?.AreApart(row, benchmark, attribute.Name),
            BenchmarkPoints = benchmark is null ? double.NaN : scores.PointsOf(column, benchmark),
        };
    }

    private CalledFactExplanation Called(string fact, ThreeValuedSet rows, ImmutableArray<CallDefinition> calls, int row) =>
        new(fact, rows.VerdictOf(row), [.. calls.Select(call => (call, ConditionTrace.Explain(call.Condition, row, inferred)))]);

    private RuleExplanation Rule(ConditionalStatement rule, RuleOutcome outcome, PlacementRow row)
    {
        var effect = outcome.Effective.Contains(row.Index) ? RuleEffect.Held
            : outcome.Overridden.Contains(row.Index) ? RuleEffect.Overridden
            : outcome.Exempt.Contains(row.Index) ? RuleEffect.Exempt
            : outcome.CouldNotTell.Contains(row.Index) ? RuleEffect.CouldNotTell
            : RuleEffect.DidNotHold;
        var exemption = effect == RuleEffect.Exempt ? rule.Info.ExceptFor.FirstOrDefault(entry => ScopeResolution.Covers(entry, row)) : null;
        return new RuleExplanation(rule, effect, ConditionTrace.Explain(rule.Condition, row.Index, inferred), exemption);
    }
}
