using Humanizer;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing;

/// <summary>How sure the authors of a house say they are, counted over the statements that score, limit and leave out.</summary>
internal static class CredenceText
{
    /// <summary>One sentence; silence counts as sure, and is counted.</summary>
    public static string Of(BoundRuleset ruleset)
    {
        var statements = ruleset.Criteria.Concat<BoundStatement>(ruleset.Calls).Concat(ruleset.Awards).Concat(ruleset.CancelOuts).Concat(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Places)
            .ToLookup(statement => statement.Info.Credence);
        var all = statements.Sum(group => group.Count());
        return $"of {"statement".ToQuantity(all)} the authors are sure of {Count(statements, Credence.Firm)}, think so of {Count(statements, Credence.Probable)}, may be wrong in {Count(statements, Credence.Shaky)}; {Count(statements, Credence.NotSaid)} do not say, which counts as sure.";
    }

    private static string Count(ILookup<Credence, BoundStatement> statements, Credence credence) => NumberText.Count(statements[credence].Count());
}
