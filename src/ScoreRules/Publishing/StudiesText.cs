using System.Collections.Immutable;
using Humanizer;
using ScoreRules.Evidence;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>The studies of a house for a terminal: what each found and does, and how the principles fare against them before any is weighed.</summary>
/// <param name="judgement">A house that was ranked.</param>
public sealed class StudiesText(Judgement judgement)
{
    private readonly ImmutableArray<MarkedClaim> marks = StudyMarks.Of(judgement.Ruleset, judgement.Catalogue, judgement.Inferred!.Facts.Rows, judgement.Scores!);

    /// <summary>All of it.</summary>
    public string Print()
    {
        var block = new TextBlock();
        block.Wrapped($"{judgement.Ruleset.House?.Name ?? "This house"}: {"study".ToQuantity(judgement.Ruleset.Studies.Length)}");
        block.Wrapped(Sentences.Education);
        foreach (var group in marks.GroupBy(mark => mark.Target.Index))
        {
            block.Blank();
            PrintTarget(block, [.. group]);
        }

        PrintCriteria(block);
        block.Blank();
        foreach (var entry in judgement.Evidence!.NotCounted)
        {
            block.Labelled("Not counted", $"study {entry.Study.Name}: {EvidenceText.NotCounted(entry, judgement.Ruleset)} ({entry.Study.Info.Location})");
        }

        block.Wrapped("Leads are points on principle, before any study is weighed. " + (marks.IsEmpty ? "No study compares two movements that a target ranks." : "A principle that studies confirm is not proven, and one that they miss is not refuted: each is one comparison."));
        return block.ToString();
    }

    private static void PrintTarget(TextBlock block, ImmutableArray<MarkedClaim> inside)
    {
        block.Line(inside[0].Target.Name.Transform(To.SentenceCase));
        foreach (var mark in inside)
        {
            block.Labelled($"  {EvidenceText.Word(mark.Mark)}", $"study {mark.Claim.Study.Name} {EvidenceText.Verb(mark.Claim)} {mark.Claim.First} {EvidenceText.Said(mark.Claim)}; on principle {NumberText.Signed(mark.PrincipleLead)}{Outside(mark)}. {Others(mark)} ({mark.Claim.Lines[0].Location})");
        }

        block.Wrapped(StudyTotals.Sentence(inside), 2);
    }

    private static string Outside(MarkedClaim mark) => Rounding.Printed(mark.Miss, 1) == 0 ? "" : $", {NumberText.Points(mark.Miss)} away from it";

    private static string Others(MarkedClaim mark) =>
        Rounding.Printed(mark.LeadFromOthers - mark.PrincipleLead, 1) == 0 ? "No other study changes that." : $"With all other studies {NumberText.Signed(mark.LeadFromOthers)}{(mark.MarkFromOthers == mark.Mark ? "" : $": {EvidenceText.Word(mark.MarkFromOthers)}")}.";

    private void PrintCriteria(TextBlock block)
    {
        var better = marks.Where(mark => mark.Direction != 0).ToList();
        if (better.Count == 0)
        {
            return;
        }

        block.Blank();
        block.Line("Criteria, in the pairs of which one was found better");
        foreach (var group in better.SelectMany(mark => mark.Criteria.Select(part => (part.Criterion, Mark: mark.Of(part.Lead)))).GroupBy(pair => pair.Criterion, StringComparer.Ordinal))
        {
            var (with, against) = (group.Count(pair => pair.Mark == ClaimMark.Hit), group.Count(pair => pair.Mark == ClaimMark.Missed));
            block.Wrapped($"{group.Key}: with the study in {NumberText.Count(with)}, against it in {NumberText.Count(against)}, level in {NumberText.Count(group.Count() - with - against)}", 2);
        }
    }
}
