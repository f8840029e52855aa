using Humanizer;
using ScoreRules.Certainty;
using ScoreRules.Evidence;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Statistics.Beliefs;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>What studies say and do, in words.</summary>
internal static class EvidenceText
{
    // Beyond this many standard deviations a study and the principles are said to disagree (about 1 in 20 by chance).
    private const double Apart = 2;

    /// <summary>What a claim says, seen from one of its sides: "at least 10.0 above the lying leg curl".</summary>
    /// <param name="claim">The claim.</param>
    /// <param name="from">The side, by its name; the first one when it is neither.</param>
    public static string Said(StudyClaim claim, string? from = null)
    {
        var turned = from is not null && from == claim.Second;
        var (low, high, other) = turned ? (-claim.High, -claim.Low, claim.First) : (claim.Low, claim.High, claim.Second);
        return claim.Sense switch
        {
            StudySense.Within when -low == high => $"within {NumberText.Plain(Rounding.Printed(high, 1))} of {other}",
            StudySense.Within => $"from {NumberText.Signed(low)} to {NumberText.Signed(high)} against {other}",
            StudySense.Measured when low == 0 => $"level with {other}",
            StudySense.Measured => $"{NumberText.Points(Math.Abs(low))} {(low > 0 ? "above" : "below")} {other}",
            _ => double.IsFinite(low) ? AtLeast(low, other) : $"at least {NumberText.Points(-high)} below {other}",
        };
    }

    /// <summary>How a study speaks, in a word of the trade: found or measured.</summary>
    public static string Verb(StudyClaim claim) => claim switch
    {
        { IsSplit: true } => "found by region, the least differences weighed by share,",
        { Sense: StudySense.Measured } => "measured",
        _ => "found",
    };

    /// <summary>A pull for the trail: the study, what it says, how much of the whole it is, and why it moved a movement that it does not name.</summary>
    public static string Pull(PlacementExplanation explained, StudyPull pull)
    {
        var name = explained.Row.Movement.Name;
        var study = $"study {pull.Claim.Study.Name} {Verb(pull.Claim)} ";
        var share = explained.Evidence!.Pulls.Length > 1 ? $"; {Share(explained.Evidence, pull)}" : "";
        if (!pull.IsTested)
        {
            return $"moved because a cousin was tested: {study}{pull.Claim.First} {Said(pull.Claim)}{share}";
        }

        var agreed = pull.Points == 0 ? ". Principle agrees; nothing had to move" : "";
        return $"{study}{(name == pull.Claim.First || name == pull.Claim.Second ? "it " : pull.Claim.First + " ")}{Said(pull.Claim, name)}, give or take {NumberText.Points(pull.Claim.Deviation)}{Doubt(pull.Claim)}{share}{agreed}";
    }

    /// <summary>What keeping an order did.</summary>
    public static string Held(PlacementExplanation explained, StudyPull pull) =>
        $"moved to keep the order of study {pull.Claim.Study.Name}, which is to decide: {pull.Claim.First} {Said(pull.Claim)}{(pull.IsTested ? "" : $"; {explained.Row.Movement.Name} moves along as a cousin")}";

    /// <summary>Studies as a reason: what the strongest of them says, and the benchmark's own move.</summary>
    public static string Reason(Reason reason)
    {
        var strongest = reason.Studies.MaxBy(pull => Math.Abs(pull.Points))!;
        var claim = strongest.Claim;
        var said = $"study {claim.Study.Name} {Verb(claim)} {claim.First} {Said(claim)}";
        var whose = reason.IsBenchmarks ? "the benchmark was tested or has a tested cousin" : strongest.IsTested ? "it was tested" : "a cousin was tested";
        var moved = reason.BenchmarkMoved;
        return $"{whose}: {said}{(Rounding.Printed(moved, 1) == 0 || reason.IsBenchmarks ? "" : $"; {NumberText.Signed(-moved)} of it because the benchmark moved")}";
    }

    /// <summary>How principles fare against a study.</summary>
    public static string Word(ClaimMark mark) => mark switch { ClaimMark.Hit => "agrees", ClaimMark.Level => "level", _ => "differs" };

    /// <summary>A study and the principles far apart; null when they are not.</summary>
    public static string? Conflict(StudyClaim claim, PriorConflict conflict) =>
        (claim.Sense == StudySense.Measured ? Math.Abs(conflict.Z) : conflict.Z) <= Apart ? null
            : $"principle and study {claim.Study.Name} disagree by {NumberText.Points(Math.Abs(conflict.Z))} times what both allow: ask which of the two is off";

    /// <summary>Where a movement would stand without any study.</summary>
    public static string? Without(PlacementExplanation explained) => explained is not { Placement: { } placement, OnPrinciple: { } alone } ? null
        : placement.Tier.Index == alone.Tier.Index && placement.Rank == alone.Rank ? "without any study it would stand in the same place"
        : $"without any study: {NumberText.Points(alone.Score)} points, {Ordinal(alone.Rank)}, {alone.Tier.Name}";

    /// <summary>What the benchmark's own move does to every gap; null when it did not move.</summary>
    public static string? BenchmarkMoved(PlacementExplanation explained)
    {
        var moved = explained.BenchmarkMoved?.Moved ?? 0;
        return Rounding.Printed(moved, 1) == 0 || explained.Ranking.Benchmark is not { } benchmark ? null
            : $"the benchmark, {benchmark.Movement.Name}, moved {NumberText.Signed(moved)}: every gap here is {NumberText.Points(Math.Abs(moved))} {(moved > 0 ? "smaller" : "larger")} than on principle alone";
    }

    /// <summary>Why a study moves nothing.</summary>
    public static string NotCounted(NotCounted entry, BoundRuleset ruleset) => entry.Reason switch
    {
        NotCountedReason.Withdrawn => $"taken back on {Sentences.Day(entry.Study.Withdrawn!.Value)}{(entry.Study.WithdrawnBecause is { } because ? $", {because}" : "")}",
        NotCountedReason.OtherOutcome => $"it measured {entry.Study.Outcome}, and this house judges {ruleset.House?.Judges}",
        NotCountedReason.ShownOnly => "to be shown only",
        NotCountedReason.NoScale => "the house does not say how far its principles and a lone study may be off",
        NotCountedReason.NoWorthOfDeviation => "the house does not say how many points a standard deviation is worth",
        NotCountedReason.Percent => "it is told in %, which cannot be turned into points",
        NotCountedReason.NotTrusted => "the house does not trust it at all",
        NotCountedReason.TooUnclear => "too unclear to tell",
        NotCountedReason.Principle => $"it speaks of a principle, \"{entry.Study.Criterion}\", and not of where one movement stands{Believed(entry.Study, ruleset)}",
        NotCountedReason.ClassesAlike => $"{entry.Study.Findings[0].First} and {entry.Study.Findings[0].Second} are about the same, so neither gets points for being one",
        _ => "no target ranks both sides of it",
    };

    /// <summary>Studies by count and name: "study Fjord-2030", "2 studies".</summary>
    public static string Studies(IReadOnlyList<StudyDefinition> studies) => studies.Count == 1 ? $"study {studies[0].Name}" : "study".ToQuantity(studies.Count);

    private static string Believed(StudyDefinition study, BoundRuleset ruleset)
    {
        if (ruleset.Criteria.FirstOrDefault(criterion => PrincipleStudies.Counts(study, criterion, ruleset)) is not { } criterion)
        {
            return "";
        }

        var (before, after) = (Admitted.Stated(criterion, ruleset), PrincipleStudies.Update(Admitted.Stated(criterion, ruleset), criterion, ruleset));
        return $"; it counts in {CertaintyText.OfHundred(after)} of 100 tries instead of {CertaintyText.OfHundred(before)}";
    }

    private static string AtLeast(double low, string other) => low switch
    {
        > 0 => $"at least {NumberText.Points(low)} above {other}",
        0 => $"not below {other}",
        _ => $"at most {NumberText.Points(-low)} below {other}",
    };

    private static string Doubt(StudyClaim claim)
    {
        var parts = new List<string>();
        if (claim.Repeats > 1)
        {
            parts.Add($"measured by {NumberText.Count(claim.Repeats)} studies");
        }

        if (claim.Study.Trust < 1)
        {
            parts.Add($"trusted {NumberText.Plain(Rounding.Printed(claim.Study.Trust * 100, 0))}%{(claim.Study.TrustBecause is { } because ? $" because {because}" : "")}");
        }

        if (claim.Covered < 1)
        {
            parts.Add($"measured on {NumberText.Plain(Rounding.Printed(claim.Covered * 100, 0))}% of this target");
        }

        return parts.Count == 0 ? "" : $" ({string.Join("; ", parts)})";
    }

    private static string Share(RowEvidence moved, StudyPull pull)
    {
        var all = moved.Pulls.Sum(each => Math.Abs(each.Points));
        var share = all == 0 ? 0 : Math.Abs(pull.Points) / all;
        var word = share switch { 0 => "none of the pull", < 0.25 => "a small part of the pull", < 0.5 => "a part of the pull", < 0.75 => "more than half of the pull", _ => "most of the pull" };
        return share == 0 ? word : $"{word}, {NumberText.Plain(Rounding.Printed(share * 100, 0))}%";
    }

    private static string Ordinal(int rank) => rank.Ordinalize(System.Globalization.CultureInfo.InvariantCulture);
}
