using System.Collections.Immutable;
using ScoreRules.Answers.Change;
using ScoreRules.Catalogue;
using ScoreRules.Explanation;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.WhyNot;

/// <summary>Finds why a rule or called fact does not hold, and what would have to be.</summary>
internal static class WhyNotFinder
{
    /// <summary>The answer.</summary>
    public static WhyNotAnswer Find(AskedHouse asked)
    {
        var (movement, statements) = (asked.Movement(0), Named(asked.Ruleset, asked.Question.Statement!));
        return new WhyNotAnswer(asked.Question, movement, statements.IsEmpty ? [] : [.. asked.Rankings.Select(ranking => Find(asked, ranking, movement, statements)).OfType<WhyNotFinding>()]);
    }

    private static ImmutableArray<BoundStatement> Named(BoundRuleset ruleset, string name) =>
    [
        .. ruleset.Calls.Concat<BoundStatement>(ruleset.Awards).Concat(ruleset.CancelOuts).Concat(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Cautions).Concat(ruleset.Refusals)
            .Where(statement => statement.Info.Name is { } own && NameText.Same(own, name)),
    ];

    private static WhyNotFinding? Find(AskedHouse asked, TargetRanking ranking, Movement movement, ImmutableArray<BoundStatement> statements)
    {
        if (asked.Explain(ranking, movement) is not { } explained)
        {
            return null;
        }

        var inferred = asked.Judgement.Inferred!;
        var ways = statements.Select(statement => Way(statement, explained.Row.Index, inferred)).ToImmutableArray();
        var holds = ways.Any(way => way.Effect == RuleEffect.Held);
        return new WhyNotFinding(explained, holds, ways, holds ? null : Search(asked, ranking, movement, statements));
    }

    private static ChangesFound Search(AskedHouse asked, TargetRanking ranking, Movement movement, ImmutableArray<BoundStatement> statements)
    {
        // The rules of refusals and cautions are read too when they are what is asked about.
        var read = new ReadAttributes(asked.Ruleset, ranking.Target, statements);
        var candidates = new ChangeCandidates(read, movement, ranking.Target).All();
        return new ChangeSearch(new Suppositions(asked.Judgement, ranking, movement, asked.OnPrinciple), candidates, supposed => statements.Any(statement => Holds(statement, supposed))).Run();
    }

    private static bool Holds(BoundStatement statement, Supposed supposed) => supposed.Judgement.Inferred!.Outcome(statement).Effective.Contains(supposed.Row.Index);

    private static WayFinding Way(BoundStatement statement, int row, InferenceResult inferred)
    {
        var outcome = inferred.Outcome(statement);
        var effect = outcome.Effective.Contains(row) ? RuleEffect.Held
            : outcome.Overridden.Contains(row) ? RuleEffect.Overridden
            : outcome.Exempt.Contains(row) ? RuleEffect.Exempt
            : outcome.CouldNotTell.Contains(row) ? RuleEffect.CouldNotTell
            : RuleEffect.DidNotHold;
        return new WayFinding(statement, effect, outcome.InScope.Contains(row), ConditionTrace.Explain(ConditionOf(statement), row, inferred));
    }

    private static Condition ConditionOf(BoundStatement statement) => statement is CallDefinition call ? call.Condition : ((ConditionalStatement)statement).Condition;
}
