using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Scoring;
using ScoreRules.Statistics.Beliefs;

namespace ScoreRules.Evidence;

/// <summary>Reads what studies say in a target: which sides it ranks, which regions it has, in points.</summary>
/// <param name="ruleset">The house.</param>
/// <param name="evidence">How it weighs studies; null when it does not say.</param>
internal sealed class StudyReader(BoundRuleset ruleset, EvidenceDefinition? evidence)
{
    private readonly PointScale scale = new(evidence);

    /// <summary>Why a study moves nothing in any target; null when it may.</summary>
    public NotCountedReason? WhyNot(StudyDefinition study) =>
        study.IsWithdrawn(ruleset.Date) ? NotCountedReason.Withdrawn
        : ruleset.House?.Judges is { } judged && !NameText.Same(judged, study.Outcome) ? NotCountedReason.OtherOutcome
        : study.Level == StudyLevel.Amounts ? NotCountedReason.Principle
        : study.Strength == StudyStrength.Show ? NotCountedReason.ShownOnly
        : study.Trust <= 0 ? NotCountedReason.NotTrusted
        : study.Findings.All(finding => finding.Verdict is StudyVerdict.Unclear or StudyVerdict.Split) ? NotCountedReason.TooUnclear
        : study.Level == StudyLevel.Classes && study.Findings.All(finding => finding.Verdict is StudyVerdict.AboutTheSame or StudyVerdict.Within) ? NotCountedReason.ClassesAlike
        : evidence is not { CanWeigh: true } ? NotCountedReason.NoScale
        : study.Findings.Select(finding => scale.Of(finding).Lacks).FirstOrDefault(lacks => lacks is NotCountedReason.NoWorthOfDeviation or NotCountedReason.Percent);

    /// <summary>What a study that may count says in a target; empty when it says nothing there.</summary>
    public IEnumerable<StudyClaim> Claims(StudyDefinition study, TargetDefinition target, ImmutableArray<PlacementRow> rows)
    {
        if (!ScopeResolution.Reaches(study.Info, target))
        {
            return [];
        }

        var pairs = study.Findings.Where(finding => finding.Amount is not null).GroupBy(finding => Sides.Of(finding.First, finding.Second)).Select(pair => Claim(study, [.. pair], target, rows)).OfType<StudyClaim>().ToList();
        var arms = pairs.SelectMany(claim => new[] { claim.First, claim.Second }).Distinct(StringComparer.Ordinal).Count();

        // All pairs of k arms tell k - 1 things, not k (k - 1) / 2: each counts for less (Ruecker 2012, Research Synthesis Methods 3:312).
        var thin = pairs.Count > arms - 1 ? Math.Sqrt((double)pairs.Count / (arms - 1)) : 1;
        return pairs.Select(claim => claim with { Deviation = claim.Deviation * thin });
    }

    private StudyClaim? Claim(StudyDefinition study, ImmutableArray<StudyFinding> findings, TargetDefinition target, ImmutableArray<PlacementRow> rows)
    {
        var (first, second) = (findings[0].First, findings[0].Second);
        if (Terms(study, first, second, rows) is not { } terms || RegionReading.Of([.. findings.Select(finding => (finding, InPoints(finding, first)))], target) is not { } reading)
        {
            return null;
        }

        var range = reading.Range;
        var split = double.IsNegativeInfinity(range.Low) && double.IsPositiveInfinity(range.High);
        var (low, high) = split ? (range.Told, range.Told) : (range.Low, range.High);
        var kind = low == high ? StudySense.Measured : double.IsFinite(low) && double.IsFinite(high) ? StudySense.Within : StudySense.AtLeast;
        return new StudyClaim(study, first, second, kind, low, high) { Lines = reading.Lines, Terms = terms, Deviation = range.Deviation, Covered = reading.Covered, IsSplit = split };
    }

    private ClaimRange InPoints(StudyFinding finding, string first)
    {
        var range = ClaimRange.Of(finding, scale.Of(finding).Points!);
        return finding.First == first ? range : range.Turned;
    }

    private static ImmutableArray<ScoreTerm>? Terms(StudyDefinition study, string first, string second, ImmutableArray<PlacementRow> rows)
    {
        var (one, other) = (Side(study, first, rows), Side(study, second, rows));
        return one.Count == 0 || other.Count == 0 ? null
            : [.. one.Select(place => new ScoreTerm(place, 1.0 / one.Count)), .. other.Select(place => new ScoreTerm(place, -1.0 / other.Count))];
    }

    private static List<int> Side(StudyDefinition study, string side, ImmutableArray<PlacementRow> rows) =>
        [.. Enumerable.Range(0, rows.Length).Where(place => study.Attribute is { } attribute ? IsOf(rows[place].Movement, attribute, side) : NameText.Same(rows[place].Movement.Name, side))];

    // A movement with several words of a list is of no single class.
    private static bool IsOf(Movement movement, AttributeDefinition attribute, string word)
    {
        var value = movement.Facts[attribute.Index].Value;
        return value.IsKnown && value.Codes is [var only] && only == attribute.CodeOf(word);
    }
}
