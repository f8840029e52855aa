using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Scoring;

namespace ScoreRules.Evidence;

/// <summary>
/// Marks the principles of a house against its studies before any of them is weighed: direction, size of misses, and each study against
/// principles and all the other studies (leaving one out). Studies that are to be shown only are marked too.
/// </summary>
public static class StudyMarks
{
    /// <summary>The marks, by target and then by name of the study.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="catalogue">Its movements.</param>
    /// <param name="rows">Its rows.</param>
    /// <param name="scores">Scores on principle.</param>
    public static ImmutableArray<MarkedClaim> Of(BoundRuleset ruleset, MovementCatalogue catalogue, ImmutableArray<PlacementRow> rows, ScoreTable scores)
    {
        var reader = new StudyReader(ruleset, ruleset.Evidence);
        var studies = ruleset.Studies.Where(study => reader.WhyNot(study) is null or NotCountedReason.ShownOnly or NotCountedReason.NoScale).OrderBy(study => study.Name, StringComparer.Ordinal).ToList();
        var without = new Dictionary<string, double[]>(StringComparer.Ordinal);
        double[] Others(StudyDefinition study) => without.TryGetValue(study.Name, out var found) ? found
            : without[study.Name] = EvidenceWeigher.Weigh(ruleset with { Studies = [.. ruleset.Studies.Where(other => other.Name != study.Name)] }, catalogue, rows, scores, new DiagnosticBag()).Scores;
        var byTarget = rows.ToLookup(row => row.Target.Index);
        return
        [
            .. ruleset.Targets.Select(target => (Target: target, Rows: byTarget[target.Index].ToImmutableArray()))
                .SelectMany(of => studies.SelectMany(study => reader.Claims(study, of.Target, of.Rows).Select(claim => Mark(claim, of.Target, of.Rows, scores, Others(study))))),
        ];
    }

    private static MarkedClaim Mark(StudyClaim claim, TargetDefinition target, ImmutableArray<PlacementRow> rows, ScoreTable scores, double[] others)
    {
        double Lead(Func<PlacementRow, double> of) => claim.Terms.Sum(term => term.Factor * of(rows[term.Score]));
        var criteria = scores.Criteria.Where(column => column.Attributes[target.Index] is not null && claim.Terms.All(term => !double.IsNaN(column.Worth[rows[term.Score].Index])))
            .Select(column => (column.Criterion.Name, Lead(row => scores.PointsOf(column, row))));
        return new MarkedClaim(target, claim, Lead(row => scores.Principle[row.Index]), Lead(row => others[row.Index]), [.. criteria]);
    }
}
