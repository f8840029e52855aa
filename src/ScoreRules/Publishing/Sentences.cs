using Humanizer;
using ScoreRules.Explanation;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>The sentences of an explanation. Names and the author's own words, never identifiers; no praise, no fear.</summary>
internal static class Sentences
{
    /// <summary>A day in words.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The line that stands in every form of output.</summary>
    public const string Education = "Education, not medical advice. Your gym's rules, local codes and licensed professionals come first.";

    /// <summary>The verdict: what sets a placement apart, and its place against the benchmark.</summary>
    public static string Verdict(PlacementExplanation explained)
    {
        if (explained.Placement is not { } placement)
        {
            return LeftOut(explained);
        }

        if (explained.Ranking.Benchmark is not { } benchmark)
        {
            return $"It scores {NumberText.Points(placement.Score)} points.";
        }

        return placement.IsBenchmark
            ? "This is the benchmark: its gap is always zero."
            : $"{Apart(explained, benchmark.Movement.Name)} {Against(placement.Gap, benchmark.Movement.Name)}";
    }

    /// <summary>A gap in words: "About 11 points above the lying leg curl."</summary>
    public static string Against(double gap, string benchmark)
    {
        var size = Math.Abs(Rounding.Compared(gap));
        if (size < 0.5)
        {
            return $"Level with the {benchmark}.";
        }

        return $"About {"point".ToQuantity(int.Parse(NumberText.Whole(gap), System.Globalization.CultureInfo.InvariantCulture))} {(gap > 0 ? "above" : "below")} the {benchmark}.";
    }

    /// <summary>Why something is a reason: the fact on both sides, or the author's own words.</summary>
    public static string Reason(Reason reason, string? benchmark)
    {
        if (reason.Criterion is { } criterion)
        {
            var own = (criterion.Attribute.IsDerived ? criterion.Attribute.Name + " " : "") + FactText.Told(criterion.Attribute, criterion.Fact);
            var told = criterion.IsUnknown ? "not recorded; the house's worth of an unknown value is used" : own;
            var other = criterion.BenchmarkFact is { } fact && benchmark is not null ? $"; {benchmark} {FactText.Value(criterion.Attribute, fact.Value)}" : "";
            return told + other + (criterion.IsApart == false ? "; no clear order on principle" : "");
        }

        if (!reason.Studies.IsEmpty)
        {
            return EvidenceText.Reason(reason);
        }

        var whose = reason.IsBenchmarks ? $"only the {benchmark} has this" : null;
        var because = reason.Statement.Because is { } words ? $"\"{Sentence(words)}\"" : null;
        return string.Join("; ", new[] { because, whose }.OfType<string>()) is { Length: > 0 } text ? text : "a rule of the house";
    }

    /// <summary>Said where nothing speaks against a movement: its weakest mark against the benchmark.</summary>
    public static string NothingAgainst(PlacementExplanation explained)
    {
        if (explained.Ranking.Benchmark is null || explained.Criteria.IsEmpty)
        {
            return "nothing worth naming";
        }

        var weakest = explained.Reasons.MinBy(reason => Rounding.Compared(reason.Points))!;
        var below = Rounding.Compared(weakest.Points) < 0;
        return below
            ? $"nothing of a point or more; the largest is {weakest.Name} {NumberText.Signed(weakest.Points)}"
            : $"nothing scores below the benchmark; the weakest mark is {Weakest(explained)}";
    }

    /// <summary>What limits did: bind, or apply without binding.</summary>
    public static string Limits(Placement placement)
    {
        if (placement.Binding is { } binding)
        {
            var why = binding.Info.Because is { } because ? $" (\"{Sentence(because)}\")" : "";
            return $"its points would put it in {placement.TierBeforeLimits.Name}; {binding.Info.Kind} {binding.Tier.Name}{why} {(binding.IsCap ? "holds it" : "keeps it up")} at {binding.Tier.Name}";
        }

        return placement.Limits.Length switch
        {
            0 => "none",
            1 => $"one applies and does not bind: {placement.Limits[0].Info.Kind} {placement.Limits[0].Tier.Name}",
            var count => $"{NumberText.Count(count)} apply; none binds",
        };
    }

    /// <summary>What a personal judgement does to a placement; null when none applies.</summary>
    public static string? Judgement(Placement placement) => placement.Judgement is not { } judgement ? null
        : $"one personal judgement: one tier {(judgement.Shift > 0 ? "lower" : "higher")}{(judgement.Info.Because is { } because ? $", \"{Sentence(because)}\"" : "")}{(Credence(judgement.Info.Credence) is { Length: > 0 } belief ? $" ({belief})" : "")} ({judgement.Info.Location})";

    /// <summary>A judgement that places a movement by another.</summary>
    public static string PlacedBy(PlaceDefinition place) =>
        $"personal judgement: {place.Movement} {place.Kind switch { PlaceKind.JustAbove => "just above", PlaceKind.JustBelow => "just below", _ => "beside" }} {place.Other}{(place.Info.Because is { } because ? $", \"{Sentence(because)}\"" : "")}{(Credence(place.Info.Credence) is { Length: > 0 } belief ? $" ({belief})" : "")} ({place.Info.Location})";

    /// <summary>Where a weight that no number states comes from; null for one that a number states.</summary>
    public static string? Basis(WeightBasis? basis) => basis switch
    {
        null => null,
        { Rank: 0 } => $"weight by comparison of {basis.Count} criteria, {basis.Source.Info.Location}",
        _ => $"weight by order: {basis.Rank.Ordinalize(System.Globalization.CultureInfo.InvariantCulture)} of {basis.Count}, {basis.Source.Info.Location}",
    };

    /// <summary>The cautions to be read before a movement's verdict, in one line; those of the whole page stand elsewhere.</summary>
    public static string First(PlacementExplanation explained) =>
        string.Join(' ', explained.Cautions.Where(shown => shown.Caution.Place is CautionPlace.BesideTheName or CautionPlace.OnTheCard).Select(shown => shown.Caution.Text));

    /// <summary>A tier's range behind its name: "10 or more above".</summary>
    public static string Range(TierDefinition tier, TierDefinition? better) => tier.Cut switch
    {
        TierCut.Above when better is null => $"{NumberText.Plain(tier.Amount)} or more above the benchmark",
        TierCut.Above => $"{NumberText.Plain(tier.Amount)} to {NumberText.Plain(better.Amount)} above",
        TierCut.Within => $"within {NumberText.Plain(tier.Amount)}",
        TierCut.Below when better is { Cut: TierCut.Within or TierCut.Below } => $"{NumberText.Plain(better.Amount)} to {NumberText.Plain(tier.Amount)} below",
        TierCut.Below => $"down to {NumberText.Plain(tier.Amount)} below",
        TierCut.Score => $"from {NumberText.Plain(tier.Amount)} points",
        TierCut.Top => $"the top {NumberText.Plain(tier.Amount * 100)} %",
        _ when better is { Cut: TierCut.Below or TierCut.Within } => $"more than {NumberText.Plain(better.Amount)} below",
        _ => "the rest",
    };

    /// <summary>Where inside its tier a placement stands.</summary>
    public static string Inside(Placement placement) => placement.Position switch
    {
        TierPosition.Upper => $"upper third, {NumberText.Points(placement.ToBorder)} from the border",
        TierPosition.Middle => $"middle third, {NumberText.Points(placement.ToBorder)} from the border",
        TierPosition.Lower => $"lower third, {NumberText.Points(placement.ToBorder)} from the border",
        _ => double.IsNaN(placement.ToBorder) ? "" : $"{NumberText.Points(placement.ToBorder)} from the border",
    };

    /// <summary>The author's words as a sentence: capital first, full stop last, otherwise unchanged.</summary>
    public static string Sentence(string words)
    {
        var trimmed = words.Trim();
        if (trimmed.Length == 0)
        {
            return trimmed;
        }

        var first = char.ToUpperInvariant(trimmed[0]) + trimmed[1..];
        return first[^1] is '.' or '!' or '?' ? first : first + ".";
    }

    /// <summary>How firmly the author believes, in the author's words; empty when not said.</summary>
    public static string Credence(Credence credence) => credence switch
    {
        Language.Binding.Credence.Firm => "firm",
        Language.Binding.Credence.Probable => "probable",
        Language.Binding.Credence.Shaky => "shaky",
        _ => "",
    };

    /// <summary>What sets a placement apart from the benchmark, without a number.</summary>
    public static string Apart(PlacementExplanation explained, string benchmark)
    {
        var ahead = explained.For.Select(reason => reason.Name).Take(2).ToList();
        var behind = explained.Against.Select(reason => reason.Name).Take(1).ToList();
        return (ahead.Count, behind.Count) switch
        {
            (0, 0) => $"Nothing worth naming sets it apart from the {benchmark}.",
            (_, 0) => $"Ahead on {FactText.Join(ahead)}, behind on nothing worth naming.",
            (0, _) => $"Behind on {FactText.Join(behind)}, ahead on nothing worth naming.",
            _ => $"Ahead on {FactText.Join(ahead)}, behind on {FactText.Join(behind)}.",
        };
    }

    private static string Weakest(PlacementExplanation explained)
    {
        var weakest = explained.Criteria.MinBy(criterion => criterion.Worth)!;
        return $"{weakest.Criterion.Name} ({FactText.Value(weakest.Attribute, weakest.Fact.Value)})";
    }

    private static string LeftOut(PlacementExplanation explained)
    {
        var rule = explained.LeftOut!.Rules[0];
        var why = rule.Info.Because is { } because ? $" \"{Sentence(because)}\"" : "";
        return $"Left out.{why} It keeps its score, {NumberText.Points(explained.LeftOut.Score)}.";
    }
}
