using Humanizer;
using ScoreRules.Explanation;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing;

/// <summary>The full trail behind a placement, in the fixed order of effect.</summary>
internal sealed class TrailText(Judgement judgement)
{
    private const int Gutter = 16;

    /// <summary>Prints the trail.</summary>
    public void Print(TextBlock block, PlacementExplanation explained)
    {
        block.Line("Trail, in the order in which things take effect");
        PrintFacts(block, explained);
        PrintCalled(block, explained);
        PrintCriteria(block, explained);
        PrintAwards(block, explained);
        PrintEvidence(block, explained);
        PrintScore(block, explained);
        PrintRest(block, explained);
        PrintRules(block, explained);
    }

    private static void PrintFacts(TextBlock block, PlacementExplanation explained)
    {
        var facts = explained.Row.Movement.Facts;
        var stated = facts.Count(fact => fact.Value.IsKnown);
        var inherited = facts.Count(fact => fact.Origin == Catalogue.FactOrigin.Inherited);
        var more = inherited == 0 ? "" : $", {NumberText.Count(inherited)} of them inherited from {explained.Row.Movement.Like}";
        block.Labelled("given facts", $"{"fact".ToQuantity(stated)} recorded{more} ({explained.Row.Movement.Location})", Gutter);
    }

    private static void PrintCalled(TextBlock block, PlacementExplanation explained)
    {
        var label = "called facts";
        foreach (var fact in explained.CalledFacts.Where(fact => fact.Verdict != Verdict.DidNotHold))
        {
            var (call, trace) = fact.Ways.FirstOrDefault(way => way.Trace.Verdict == fact.Verdict);
            var unsure = fact.Verdict == Verdict.CouldNotTell ? " cannot be told" : "";
            var basis = trace is null ? "" : $": {TraceText.Held(trace)}";
            block.Labelled(label, $"{fact.Name}{unsure}{basis} ({(call ?? fact.Ways[0].Call).Info.Location}){AmendmentText.Behind((call ?? fact.Ways[0].Call).Info)}", Gutter);
            label = "";
        }

        if (label.Length > 0)
        {
            block.Labelled(label, "none holds", Gutter);
        }
    }

    private static void PrintCriteria(TextBlock block, PlacementExplanation explained)
    {
        block.Labelled("criteria", $"{"criterion".ToQuantity(explained.Criteria.Length)}, weights total {NumberText.Plain(Tiering.Rounding.Printed(explained.WeightTotal, 1))}{(Math.Abs(explained.WeightTotal - 100) < 1e-9 ? "" : ", brought to 100")}", Gutter);
        foreach (var criterion in explained.Criteria)
        {
            var belief = Sentences.Credence(criterion.Criterion.Info.Credence);
            var worth = $"worth {NumberText.Plain(Tiering.Rounding.Printed(criterion.Worth * 100, 1))} % of {NumberText.Plain(Tiering.Rounding.Printed(criterion.Share * 100, 1))}{(Sentences.Basis(criterion.Basis) is { } basis ? $" ({basis})" : "")}";
            var because = criterion.Criterion.Info.Because is { } words ? $" \"{Sentences.Sentence(words)}\"" : "";
            block.Labelled($"  {NumberText.Points(criterion.Points),6}", $"{criterion.Criterion.Name}: {criterion.Attribute.Name} {FactText.Told(criterion.Attribute, criterion.Fact)}{(criterion.IsApart == false ? ", no clear order against the benchmark" : "")}; {worth}{(belief.Length == 0 ? "" : $"; {belief}")}.{because} ({criterion.Criterion.Info.Location}; fact {Place(criterion)}){AmendmentText.Behind(criterion.Criterion.Info)}", Gutter);
        }

        block.Labelled($"  {NumberText.Points(explained.CriteriaPoints),6}", "from criteria", Gutter);
    }

    private static string Place(CriterionExplanation criterion) => criterion.Fact.Location?.ToString() ?? "not recorded";

    private static void PrintAwards(TextBlock block, PlacementExplanation explained)
    {
        var awards = explained.Held<AwardDefinition>().ToList();
        block.Labelled("awards", awards.Count == 0 ? "none" : "", Gutter);
        foreach (var rule in awards)
        {
            var award = (AwardDefinition)rule.Rule;
            var because = award.Info.Because is { } words ? $" \"{Sentences.Sentence(words)}\"" : "";
            block.Labelled($"  {NumberText.Signed(award.Points),6}", $"{award.Info.Name ?? award.Info.Kind}: {TraceText.Held(rule.Trace)}.{because} ({award.Info.Location}){AmendmentText.Behind(award.Info)}", Gutter);
        }

        foreach (var rule in explained.Held<CancelOutDefinition>())
        {
            var cancel = (CancelOutDefinition)rule.Rule;
            var points = cancel.Points is { } each ? $" ({NumberText.Signed(each)} and {NumberText.Signed(-each)})" : "";
            block.Labelled("    even", $"{cancel.InFavour}, {cancel.Against}{points}: called even. ({cancel.Info.Location}){AmendmentText.Behind(cancel.Info)}", Gutter);
        }
    }

    private void PrintEvidence(TextBlock block, PlacementExplanation explained)
    {
        block.Labelled("principle", $"{NumberText.Points(explained.PrincipleScore)}, the sum of criteria and awards", Gutter);
        var lines = EvidenceTrail.Lines(explained, judgement).ToList();
        block.Labelled("evidence", lines.Exists(line => line.Points.Length > 0) ? "" : "no study speaks of it or of a cousin", Gutter);
        foreach (var (points, words) in lines)
        {
            block.Labelled($"  {points,6}", words, Gutter);
        }
    }

    private static void PrintScore(TextBlock block, PlacementExplanation explained)
    {
        var score = explained.Placement?.Score ?? explained.LeftOut!.Score;
        var doubt = explained.Evidence is { Deviation: var deviation } && double.IsFinite(deviation) ? $", give or take {NumberText.Points(deviation)}" : "";
        block.Labelled("score", $"{NumberText.Points(score)}{doubt}", Gutter);
        if (explained.Placement is not { } placement)
        {
            return;
        }

        if (explained.Ranking.Benchmark is { } benchmark)
        {
            block.Labelled("benchmark", $"{benchmark.Movement.Name}, {NumberText.Points(placement.Score - placement.Gap)}", Gutter);
            block.Labelled("gap", NumberText.Signed(placement.Gap), Gutter);
        }

        var inside = Sentences.Inside(placement);
        block.Labelled("tier", $"{placement.TierBeforeLimits.Name}{(inside.Length == 0 ? "" : $", {inside}")}", Gutter);
        block.Labelled("limits", Sentences.Limits(placement), Gutter);
        foreach (var limit in placement.Limits)
        {
            block.Labelled("", $"{limit.Info.Kind} {limit.Tier.Name}{(limit.Info.Because is { } because ? $": \"{Sentences.Sentence(because)}\"" : "")} ({limit.Info.Location}){AmendmentText.Behind(limit.Info)}", Gutter);
        }
    }

    private static void PrintRest(TextBlock block, PlacementExplanation explained)
    {
        block.Labelled("judgements", explained.Placement is { } placement && Sentences.Judgement(placement) is { } judged ? judged : "none", Gutter);
        block.Labelled("left out", explained.LeftOut is null ? "no" : string.Join("; ", explained.LeftOut.Rules.Select(rule => $"by {rule.Info.Title}{(rule.Info.Because is { } because ? $": \"{Sentences.Sentence(because)}\"" : "")} ({rule.Info.Location}){AmendmentText.Behind(rule.Info)}")), Gutter);
        block.Labelled("cautions", explained.Cautions.IsEmpty ? "none" : $"{NumberText.Count(explained.Cautions.Length)}, shown first or at the foot: {string.Join(", ", explained.Cautions.Select(caution => caution.Caution.Info.Location.ToString()))}", Gutter);
    }

    private void PrintRules(TextBlock block, PlacementExplanation explained)
    {
        var silent = explained.Rules.Where(rule => rule.Effect != RuleEffect.Held && rule.Rule is not CautionDefinition).ToList();
        block.Blank();
        block.Line("Rules that had no effect here");
        foreach (var rule in silent)
        {
            block.Wrapped($"{rule.Rule.Info.Title} ({rule.Rule.Info.Location}): {TraceText.NoEffect(rule)}", 2);
        }

        foreach (var fact in explained.CalledFacts.Where(fact => fact.Verdict == Verdict.DidNotHold))
        {
            var (call, trace) = fact.Ways[0];
            block.Wrapped($"call \"{fact.Name}\" ({call.Info.Location}): {TraceText.Failed(trace.FirstDecisive())}", 2);
        }

        if (judgement.Ruleset.NotYetApplied.Length > 0)
        {
            block.Wrapped($"Read and checked, but without effect yet: {string.Join(", ", judgement.Ruleset.NotYetApplied.Select(later => later.What))}.", 2);
        }
    }
}
