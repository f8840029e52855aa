using System.Text.Json;
using ScoreRules.Evidence;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing;

/// <summary>Studies against principles as JSON; numbers unrounded.</summary>
public static class StudiesJson
{
    /// <summary>The studies of a house that was ranked.</summary>
    public static string Print(Judgement judgement)
    {
        var marks = StudyMarks.Of(judgement.Ruleset, judgement.Catalogue, judgement.Inferred!.Facts.Rows, judgement.Scores!);
        var document = new StudiesDocument(
            JudgementJson.SchemaVersion, JudgementJson.ToolVersion, Sentences.Education, JudgementJson.House(judgement), StudyTotals.Of(marks),
            [.. marks.Select(Part)], [.. judgement.Evidence!.NotCounted.Select(entry => EvidenceParts.NotCounted(entry, judgement.Ruleset))]);
        return JsonSerializer.Serialize(document, JudgementJson.Context.StudiesDocument) + "\n";
    }

    private static MarkedPart Part(MarkedClaim mark) => new(
        mark.Target.Name, mark.Claim.Study.Name, mark.Claim.First, mark.Claim.Second, EvidenceParts.Finite(mark.Claim.Low), EvidenceParts.Finite(mark.Claim.High), mark.PrincipleLead, mark.LeadFromOthers,
        EvidenceText.Word(mark.Mark), EvidenceText.Word(mark.MarkFromOthers), mark.Miss, [.. mark.Criteria.Select(part => new CriterionLead(part.Criterion, part.Lead))], JsonParts.Rule(mark.Claim.Study.Info));
}
