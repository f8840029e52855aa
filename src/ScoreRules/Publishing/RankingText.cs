using Humanizer;
using ScoreRules.Certainty;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>Rankings for a terminal: cautions first, then tiers in words, each movement with its reasons.</summary>
/// <param name="judgement">A house that was ranked.</param>
/// <param name="certainty">How sure its placements are; null when that was not tried out.</param>
public sealed class RankingText(Judgement judgement, HouseCertainty? certainty = null)
{
    private const int NameWidth = 46;
    private readonly Explainer explainer = judgement.Explainer ?? throw new InvalidOperationException("Nothing was ranked.");

    /// <summary>The rankings given, one below another, as the judgement's profile sees them if it has one.</summary>
    public string Print(IReadOnlyList<TargetRanking> whole)
    {
        var block = new TextBlock();
        var personal = judgement.Profile is { } profile ? new PersonalText(judgement, profile, whole) : null;
        var rankings = personal?.Rankings ?? whole;
        PrintHead(block, rankings);
        personal?.PrintHead(block);
        foreach (var ranking in rankings)
        {
            block.Blank();
            PrintTarget(block, ranking);
            personal?.PrintSetAside(block, ranking.Target);
        }

        block.Blank();
        PrintFoot(block, rankings);
        return block.ToString();
    }

    private void PrintHead(TextBlock block, IReadOnlyList<TargetRanking> rankings)
    {
        if (judgement.Ruleset.House is { } house)
        {
            block.Wrapped($"{house.Name}, version {house.Version}{(house.WrittenBy is null ? "" : $", written by {house.WrittenBy}")}");
        }

        if (AmendmentText.Summary(judgement.Ruleset) is { } summary)
        {
            block.Labelled("Builds on", summary);
        }

        if (judgement.Ruleset.Date is { } day)
        {
            block.Labelled("Judged for", Sentences.Day(day));
        }

        BrokenText.Print(block, judgement);
        block.Wrapped(Sentences.Education);
        foreach (var (caution, _, _) in new CautionList(rankings, explainer).At(CautionPlace.AboveTheRanking))
        {
            block.Labelled("First", caution.Text);
        }

        foreach (var failed in judgement.Expectations.Where(result => !result.Holds))
        {
            block.Labelled("Expectation", $"fails ({failed.Expectation.Info.Location}): {failed.Found}");
        }
    }

    private void PrintTarget(TextBlock block, TargetRanking ranking)
    {
        var judges = judgement.Ruleset.House?.Judges is { } outcome ? $" for {outcome}" : "";
        var against = ranking.Benchmark is null ? "" : $", against the {ranking.Benchmark.Movement.Name}";
        block.Wrapped($"{Sentences.Capital(ranking.Target.Name)}: {"movement".ToQuantity(ranking.Placements.Length)}{judges}{against}");
        if (ranking.BenchmarkIsYardstickOnly)
        {
            block.Wrapped("The benchmark is left out: it is a yardstick only.");
        }

        PrintEvidence(block, ranking);
        PrintFirst(block, ranking);
        TierDefinition? better = null;
        foreach (var tier in judgement.Ruleset.Tiers)
        {
            var inside = ranking.Placements.Where(placement => placement.Tier.Index == tier.Index).ToList();
            if (inside.Count > 0)
            {
                PrintTier(block, ranking, tier, better, inside);
            }

            better = tier;
        }

        PrintLeftOut(block, ranking);
    }

    private void PrintEvidence(TextBlock block, TargetRanking ranking)
    {
        if (EvidenceSummary.Of(judgement, ranking) is { } summary)
        {
            block.Wrapped(summary);
        }

        if (certainty?.Of(ranking.Target) is { } sure)
        {
            block.Wrapped(CertaintyText.Summary(sure, judgement));
        }
    }

    private void PrintFirst(TextBlock block, TargetRanking ranking)
    {
        var first = new CautionList([ranking], explainer).At(CautionPlace.BesideTheName);
        if (first.IsEmpty)
        {
            return;
        }

        block.Blank();
        block.Line("Read first");
        foreach (var (caution, undecided, movements) in first)
        {
            var about = movements.Length == ranking.Placements.Length ? "all of them" : string.Join(", ", movements);
            block.Wrapped($"{about}: {caution.Text}{(undecided ? " (could not be told from the facts; shown to be careful)" : "")}", 2);
        }
    }

    private void PrintTier(TextBlock block, TargetRanking ranking, TierDefinition tier, TierDefinition? better, List<Placement> inside)
    {
        block.Blank();
        block.Line(TextBlock.Pad($"{tier.Name}  ({Sentences.Range(tier, better)})", 62) + "points     gap");
        foreach (var placement in inside)
        {
            var rank = placement.IsTied ? $"{NumberText.Count(placement.Rank)}=" : NumberText.Count(placement.Rank);
            var gap = placement.IsBenchmark ? "benchmark" : NumberText.Signed(placement.Gap);
            var tested = judgement.Evidence?.Of(placement.Row).IsTested == true ? " *" : "";
            var name = TextBlock.Pad(placement.Row.Movement.Name + tested, NameWidth);
            var sure = certainty?.Of(ranking.Target)?.Of(placement.Row.Movement);
            block.Line($"{rank,4} {name}{(sure is null ? "" : CertaintyText.Bar(sure)),-11}{NumberText.Points(placement.Score),6}{(placement.IsBenchmark ? " " : "")}{gap,8}");
            PrintReasons(block, explainer.Explain(ranking, placement.Row.Movement)!, placement);
            PrintSure(block, placement, sure);
            PersonalText.PrintFlags(block, judgement.Profile, placement.Row.Movement);
        }
    }

    private static void PrintSure(TextBlock block, Placement placement, PlacementCertainty? sure)
    {
        if (sure is not null && !placement.IsBenchmark)
        {
            block.Wrapped(CertaintyText.Short(sure), 7);
        }
    }

    private static void PrintReasons(TextBlock block, PlacementExplanation explained, Placement placement)
    {
        if (placement.IsBenchmark)
        {
            block.Wrapped("This is the benchmark: its gap is always zero.", 7);
        }
        else
        {
            PrintApart(block, explained);
        }

        if (placement.Binding is not null)
        {
            block.Wrapped($"limit: {Sentences.Limits(placement)}", 7);
        }

        if (Sentences.Judgement(placement) is { } judged)
        {
            block.Wrapped(judged, 7);
        }
    }

    private static void PrintApart(TextBlock block, PlacementExplanation explained)
    {
        if (explained.For.IsEmpty && explained.Against.IsEmpty)
        {
            block.Wrapped("nothing worth naming sets it apart from the benchmark", 7);
        }
        else
        {
            var ahead = explained.For.IsEmpty ? "nothing worth naming" : Named(explained.For);
            var behind = explained.Against.IsEmpty ? "nothing worth naming" : Named(explained.Against);
            block.Wrapped($"for {ahead}; against {behind}", 7);
        }
    }

    private static string Named(IEnumerable<Reason> reasons) => string.Join(", ", reasons.Select(reason => $"{reason.Name} {NumberText.Signed(reason.Points)}"));

    private static void PrintLeftOut(TextBlock block, TargetRanking ranking)
    {
        if (ranking.LeftOut.IsEmpty)
        {
            return;
        }

        block.Blank();
        foreach (var row in ranking.LeftOut)
        {
            var rule = row.Rules[0];
            var why = rule.Info.Because is { } because ? $" \"{Sentences.Sentence(because)}\"" : "";
            block.Labelled("Left out", $"{row.Row.Movement.Name}:{why} It keeps its score, {NumberText.Points(row.Score)}. ({rule.Info.Location})");
        }
    }

    private void PrintFoot(TextBlock block, IReadOnlyList<TargetRanking> rankings)
    {
        foreach (var line in UndecidedText.Lines(rankings, explainer))
        {
            block.Labelled("Could not tell", line);
        }

        if (!judgement.Ruleset.NotYetApplied.IsEmpty)
        {
            block.Labelled("No effect yet", $"read and checked only: {string.Join(", ", judgement.Ruleset.NotYetApplied.Select(later => $"{later.What} ({NumberText.Count(later.Count)})"))}; scorerules check says where");
        }

        foreach (var entry in judgement.Evidence?.NotCounted ?? [])
        {
            block.Labelled("Not counted", $"study {entry.Study.Name}: {EvidenceText.NotCounted(entry, judgement.Ruleset)} ({entry.Study.Info.Location})");
        }

        block.Labelled("How sure", CredenceText.Of(judgement.Ruleset) + (certainty is null ? "" : " 10,000 tries vary all that they admit; in each bar, = lands in its tier, - in a better one before it and in a worse one behind it."));
        if (judgement.Ruleset is { NotInForce: { IsEmpty: false } absent, Date: { } day })
        {
            block.Labelled("Not in force", $"on {Sentences.Day(day)}: {string.Join(", ", absent.Select(info => $"{info.Title} ({info.Location})"))}");
        }

        foreach (var (caution, _, _) in new CautionList(rankings, explainer).At(CautionPlace.AtTheFoot))
        {
            block.Labelled(caution.Severity == CautionSeverity.Stop ? "Stop" : "Caution", caution.Text);
        }

        block.Labelled("Why", "scorerules explain HOUSE \"MOVEMENT\" shows the whole trail behind a placement.");
        block.Wrapped("Points are rounded after adding. " + Sentences.Education);
    }
}
