using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Beliefs;

/// <summary>Rulesets without some of their statements. Cautions and refusals are never taken out.</summary>
internal static class Without
{
    /// <summary>The house without the statements.</summary>
    public static BoundRuleset Of(BoundRuleset ruleset, ImmutableArray<BoundStatement> statements) => ruleset with
    {
        Criteria = Left(ruleset.Criteria, statements),
        Calls = Left(ruleset.Calls, statements),
        Awards = Left(ruleset.Awards, statements),
        Limits = Left(ruleset.Limits, statements),
        Exclusions = Left(ruleset.Exclusions, statements),
        Places = Left(ruleset.Places, statements),
        Studies = Left(ruleset.Studies, statements),
        Expectations = [],
    };

    /// <summary>All statements that can be taken out, in the order of their places. What asks who somebody is protects people, and is not supposed away.</summary>
    public static IEnumerable<BoundStatement> Removable(BoundRuleset ruleset) =>
        ruleset.Criteria.Concat<BoundStatement>(ruleset.Calls).Concat(ruleset.Awards).Concat(ruleset.Limits.Where(limit => !ConditionWalk.AsksWho(limit.Condition)))
            .Concat(ruleset.Exclusions.Where(exclusion => !ConditionWalk.AsksWho(exclusion.Condition))).Concat(ruleset.Places).Concat(ruleset.Studies)
            .OrderBy(statement => statement.Info.Location, Comparer<Language.Text.SourceLocation>.Create(Language.Text.SourceLocation.Compare));

    private static ImmutableArray<T> Left<T>(ImmutableArray<T> all, ImmutableArray<BoundStatement> without)
        where T : BoundStatement => [.. all.Where(statement => !without.Any(other => ReferenceEquals(other, statement)))];
}
