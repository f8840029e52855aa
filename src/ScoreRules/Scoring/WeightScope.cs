using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Scoring;

/// <summary>Which statements about weights hold for a target.</summary>
internal static class WeightScope
{
    private const int Everywhere = 0;

    /// <summary>
    /// The statements in force for a target. One for a smaller target stands in for a wider one that speaks of any of its
    /// criteria: weights of two statements have no common scale.
    /// </summary>
    /// <param name="statements">All statements.</param>
    /// <param name="target">The target; null in a house that has none.</param>
    public static ImmutableArray<WeightsDefinition> InForce(ImmutableArray<WeightsDefinition> statements, TargetDefinition? target)
    {
        var fitting = statements.Select(statement => (Statement: statement, Fit: Fit(statement.Info, target))).Where(pair => pair.Fit is not null).ToList();
        return [.. fitting.Where(pair => !fitting.Exists(other => other.Fit > pair.Fit && SpeakOfOne(other.Statement, pair.Statement))).Select(pair => pair.Statement)];
    }

    private static bool SpeakOfOne(WeightsDefinition left, WeightsDefinition right) => left.Criteria.Intersect(right.Criteria, StringComparer.Ordinal).Any();

    // How closely a statement is meant for a target: 2 for it by name, 1 for what it is part of, 0 for all; null when not meant for it.
    private static int? Fit(StatementInfo info, TargetDefinition? target)
    {
        if (target is null)
        {
            return info.OnlyFor.IsEmpty ? Everywhere : null;
        }

        if (info.ExceptFor.Any(entry => ScopeResolution.Covers(entry, target)))
        {
            return null;
        }

        var covering = info.OnlyFor.Where(entry => ScopeResolution.Covers(entry, target)).ToList();
        return info.OnlyFor.IsEmpty ? Everywhere : covering.Count == 0 ? null : covering.Exists(entry => entry.Target!.Name == target.Name) ? 2 : 1;
    }
}
