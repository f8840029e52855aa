using System.Collections.Immutable;
using System.Text.Json;
using ScoreRules.Answers;
using ScoreRules.Publishing.Answers;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing;

/// <summary>Answers as JSON: the same sentences as the text form, with their numbers unrounded.</summary>
public static class AnswerJson
{
    /// <summary>The answers given.</summary>
    public static string Print(Judgement judgement, IEnumerable<Answer> answers)
    {
        var document = new AskDocument(
            JudgementJson.SchemaVersion, JudgementJson.ToolVersion, Sentences.Education, JudgementJson.House(judgement), judgement.Profile?.Name, JudgementJson.Inputs(judgement),
            [.. answers.Select(AnswerWords.Of).Select(page => Part(judgement, page))]);
        return JsonSerializer.Serialize(document, JudgementJson.Context.AskDocument) + "\n";
    }

    private static AnswerPart Part(Judgement judgement, AnswerPage page)
    {
        var explainer = page.Answer.Judged(judgement).Explainer!;
        return new AnswerPart(
            AnswerText.Asked(page.Answer.Question), page.Answer.Question.Info.Kind,
            [.. AnswerCautions.Of(page.Answer.Rows, explainer).Select(caution => new AboutPart(JsonParts.Caution(caution.Shown), caution.Movements))],
            [.. page.Sections.Select(Section)],
            page.Notes);
    }

    private static AnswerSectionPart Section(AnswerSection section)
    {
        var lines = ImmutableArray.CreateBuilder<AnswerLinePart>(section.Lines.Length);
        var label = "";
        foreach (var line in section.Lines)
        {
            label = line.Label.Length > 0 ? line.Label : label;
            lines.Add(new AnswerLinePart(label, line.Text, line.Depth, line.Figures));
        }

        return new AnswerSectionPart(section.Target, section.Lead, lines.ToImmutable());
    }
}
