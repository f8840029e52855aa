using ScoreRules.Evidence;
using ScoreRules.Language;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Tiering;

namespace ScoreRules.Guarding;

/// <summary>Warns where limits or judgements leave a movement below one that a study which is to decide put under it. The limit wins; it must not win unseen.</summary>
internal static class BrokenOrders
{
    /// <summary>Reports them, once a study and target.</summary>
    public static void Report(EvidenceTable evidence, IEnumerable<TargetRanking> rankings, DiagnosticBag findings)
    {
        foreach (var ranking in rankings)
        {
            foreach (var claim in evidence.Targets[ranking.Target.Index].Claims.Where(claim => claim is { Study.Strength: StudyStrength.Decide, Sense: not StudySense.Within, IsSplit: false, Terms.Length: 2 }))
            {
                Report(claim, ranking, findings);
            }
        }
    }

    private static void Report(StudyClaim claim, TargetRanking ranking, DiagnosticBag findings)
    {
        var (first, second) = (Of(ranking, claim.First), Of(ranking, claim.Second));
        var (better, worse) = claim.Direction > 0 ? (first, second) : (second, first);
        if (better is null || worse is null || better.Rank <= worse.Rank)
        {
            return;
        }

        // Without a limit or a judgement, studies that contradict one another are the cause, which is told by itself.
        if ((better.Binding?.Info ?? worse.Binding?.Info ?? better.Judgement?.Info ?? worse.Judgement?.Info) is not { } cause)
        {
            return;
        }

        findings.Add(new Diagnostic("SR6014", Severity.Warning, $"\"{better.Row.Movement.Name}\" stands below \"{worse.Row.Movement.Name}\" in {ranking.Target.Name}, though study \"{claim.Study.Name}\" is to decide", new Label(claim.Lines[0].Location, "decided here"))
        {
            Within = claim.Study.Info.Title,
            Section = claim.Study.Info.Section,
            Others = [new Label(cause.Location, "stands in the way")],
            Notes = ["limits and judgements come after studies, so the order is not kept"],
            Suggestions = [new Suggestion("except one of the two movements from what stands in the way, or write \"weigh it\" in the study")],
        });
    }

    private static Placement? Of(TargetRanking ranking, string movement) => ranking.Placements.FirstOrDefault(placement => placement.Row.Movement.Name == movement);
}
