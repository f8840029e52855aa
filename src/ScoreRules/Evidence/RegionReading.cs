using System.Collections.Immutable;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Evidence;

/// <summary>What the lines of one study about one pair say of a whole target.</summary>
/// <param name="Range">The difference of first less second, in points.</param>
/// <param name="Covered">Which share of the target's muscles was measured, above 0 to 1.</param>
/// <param name="Lines">The lines that it rests on.</param>
internal sealed record RegionReading(ClaimRange Range, double Covered, ImmutableArray<StudyFinding> Lines)
{
    /// <summary>
    /// Reads lines for a target. A line for regions counts by the share of their muscles in the target; a muscle that no line speaks of is no
    /// information. Lines about the whole stand where the regions do not make up all of the target; in a sub-target they stand only when
    /// the study tells no regions. Of two lines about the same thing the measured one gives the number; a "found" one beside it keeps it one-sided.
    /// </summary>
    /// <param name="lines">Lines about one pair, all with an amount, turned to the same side.</param>
    /// <param name="target">The target.</param>
    /// <returns>Null when the lines say nothing of the target.</returns>
    public static RegionReading? Of(ImmutableArray<(StudyFinding Finding, ClaimRange Range)> lines, TargetDefinition target)
    {
        var whole = lines.Where(line => line.Finding.Regions.IsEmpty).ToList();
        var byMuscle = target.Muscles.Select(part => (part.Share, Lines: lines.Where(line => line.Finding.Regions.Contains(part.Muscle, StringComparer.Ordinal)).ToList())).Where(part => part.Lines.Count > 0).ToList();
        var covered = byMuscle.Sum(part => part.Share);
        var tellsRegions = lines.Length > whole.Count;
        if (whole.Count > 0 && covered < 1 - 1e-9 && !(tellsRegions && target.Parent is not null))
        {
            return new RegionReading(Together(whole), 1, [.. whole.Select(line => line.Finding)]);
        }

        if (byMuscle.Count == 0)
        {
            return null;
        }

        var range = byMuscle.Aggregate(ClaimRange.None, (sum, part) => sum.Plus(Together(part.Lines).Times(part.Share / covered)));
        return new RegionReading(range, Math.Min(1, covered), [.. byMuscle.SelectMany(part => part.Lines).Select(line => line.Finding).Distinct()]);
    }

    private static ClaimRange Together(List<(StudyFinding Finding, ClaimRange Range)> lines)
    {
        var measured = lines.Find(line => line.Finding.Verdict == StudyVerdict.MeasuredBetter);
        var found = lines.Find(line => line.Finding.Verdict != StudyVerdict.MeasuredBetter);
        if (measured.Finding is null || found.Finding is null)
        {
            return (measured.Finding is null ? found : measured).Range;
        }

        // One study, told in a word and in a number: the number, and never against the side that the word favours.
        var number = measured.Range;
        return double.IsPositiveInfinity(found.Range.High) ? number with { High = double.PositiveInfinity }
            : double.IsNegativeInfinity(found.Range.Low) ? number with { Low = double.NegativeInfinity }
            : number;
    }
}
