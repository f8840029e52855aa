using ScoreRules.Certainty;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing;

/// <summary>
/// One placement for a terminal: cautions first, the verdict, reasons for and against, then the full trail in the fixed
/// order of effect, each step with its rule's file and line.
/// </summary>
/// <param name="judgement">A house that was ranked.</param>
/// <param name="certainty">How sure its placements are; null when that was not tried out.</param>
public sealed class ExplanationText(Judgement judgement, HouseCertainty? certainty = null)
{
    private readonly TrailText trail = new(judgement);

    /// <summary>The card and the trail.</summary>
    public string Print(PlacementExplanation explained)
    {
        var block = new TextBlock();
        PrintHeading(block, explained);
        PrintCautions(block, explained);
        block.Labelled("Verdict", Sentences.Verdict(explained));
        block.Blank();
        PrintReasons(block, explained);
        PrintSure(block, explained);
        block.Blank();
        trail.Print(block, explained);
        block.Blank();
        foreach (var caution in explained.Cautions.Where(caution => caution.Caution.Place == CautionPlace.AtTheFoot))
        {
            block.Labelled(caution.Caution.Severity == CautionSeverity.Stop ? "Stop" : "Caution", caution.Caution.Text);
        }

        block.Wrapped("Points are rounded after adding. " + Sentences.Education);
        return block.ToString();
    }

    private void PrintSure(TextBlock block, PlacementExplanation explained)
    {
        if (certainty?.Of(explained.Row.Target) is not { } target || target.Of(explained.Row.Movement) is not { } sure || sure.Placement.IsBenchmark)
        {
            return;
        }

        block.Labelled("How sure", $"{CertaintyText.Of(sure, judgement.Ruleset)} {CertaintyText.Span(sure)}.");
        var beside = target.Beside(sure).ToList();
        if (beside.Count > 0)
        {
            block.Labelled("Beside it", string.Join("; ", beside.Select(other => $"{other.Placement.Row.Movement.Name}, {CertaintyText.Ahead(target.AheadOf(explained.Row.Movement, other.Placement.Row.Movement)!.Value)}")));
        }
    }

    private static void PrintHeading(TextBlock block, PlacementExplanation explained)
    {
        var name = Sentences.Capital(explained.Row.Movement.Name);
        var target = explained.Row.Target.Name;
        var place = explained.Placement is { } placement
            ? $"{target}, {NumberText.Count(placement.Rank)} of {NumberText.Count(explained.Ranking.Placements.Length)}, {placement.Tier.Name}"
            : $"{target}, left out";
        block.Line(TextBlock.Pad(name, 78 - place.Length > name.Length ? 78 - place.Length : name.Length + 2) + place);
    }

    private static void PrintCautions(TextBlock block, PlacementExplanation explained)
    {
        block.Blank();
        var first = true;
        foreach (var shown in explained.Cautions.Where(caution => caution.Caution.Place != CautionPlace.AtTheFoot))
        {
            var undecided = shown.IsUndecided ? " (Could not be told from the facts; shown to be careful.)" : "";
            block.Labelled(first ? "First" : "", shown.Caution.Text + undecided);
            first = false;
        }

        if (!first)
        {
            block.Blank();
        }
    }

    private static void PrintReasons(TextBlock block, PlacementExplanation explained)
    {
        var benchmark = explained.Ranking.Benchmark?.Movement.Name;
        PrintReasons(block, "For", explained.For, benchmark, explained.Placement?.IsBenchmark == true ? "everything is measured against it" : "nothing of a point or more");
        if (explained.Placement?.IsBenchmark != true)
        {
            PrintReasons(block, "Against", explained.Against, benchmark, Sentences.NothingAgainst(explained));
        }
    }

    private static void PrintReasons(TextBlock block, string label, IReadOnlyList<Reason> reasons, string? benchmark, string otherwise)
    {
        if (reasons.Count == 0)
        {
            block.Labelled(label, otherwise);
        }

        for (var i = 0; i < reasons.Count; i++)
        {
            var reason = reasons[i];
            block.Labelled(i == 0 ? label : "", $"{reason.Name} {NumberText.Signed(reason.Points)}: {Sentences.Reason(reason, benchmark)}");
        }
    }
}
