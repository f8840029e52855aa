using ScoreRules.Evidence;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing.Json;

/// <summary>Turns evidence into parts of the documents.</summary>
internal static class EvidenceParts
{
    /// <summary>The evidence behind a placement; null where none was asked.</summary>
    public static EvidencePart? Of(PlacementExplanation explained) => explained.Evidence is not { } moved ? null : new EvidencePart(
        moved.IsTested,
        [.. moved.Pulls.Select(pull => Pull(pull, EvidenceText.Pull(explained, pull)))],
        [.. moved.Held.Select(pull => Pull(pull, EvidenceText.Held(explained, pull)))],
        moved.PlacePoints, moved.Place is { } place ? JsonParts.Rule(place.Info) : null,
        double.IsNaN(moved.Deviation) ? null : moved.Deviation,
        explained.BenchmarkMoved?.Moved ?? 0,
        explained.OnPrinciple is { } alone ? new WithoutPart(alone.Rank, alone.Tier.Name, alone.Score, double.IsNaN(alone.Gap) ? null : alone.Gap) : null);

    /// <summary>A study that moves nothing.</summary>
    public static NotCountedPart NotCounted(NotCounted entry, BoundRuleset ruleset) => new(entry.Study.Name, EvidenceText.NotCounted(entry, ruleset), JsonParts.Rule(entry.Study.Info));

    private static PullPart Pull(StudyPull pull, string text)
    {
        var claim = pull.Claim;
        var sense = claim.Sense switch { StudySense.Measured => "measured", StudySense.Within => "within", _ => "at least" };
        return new PullPart(claim.Study.Name, pull.Points, pull.IsTested, sense, claim.First, claim.Second, Finite(claim.Low), Finite(claim.High), claim.Deviation, text, JsonParts.Rule(claim.Study.Info));
    }

    /// <summary>A number; null for an open end.</summary>
    public static double? Finite(double number) => double.IsFinite(number) ? number : null;
}
