using System.Globalization;
using System.Text;
using ScoreRules.Language.Binding;
using ScoreRules.Teaching;

namespace ScoreRules.Publishing.Lessons;

/// <summary>A lesson as a script to talk from: cautions first, then one movement after the other.</summary>
public sealed class LessonMarkdown(Judgement judgement, Lesson lesson)
{
    private readonly StringBuilder page = new();

    /// <summary>The script.</summary>
    public string Print()
    {
        var cautions = new CautionList([lesson.Ranking], judgement.Explainer!);
        var edition = Publishing.Edition.Of(judgement).Text;
        Paragraph($"# {Escaped(LessonWords.Title(lesson))}");
        Paragraph($"{Escaped(edition)}. {Sentences.Education}");
        PrintAll(cautions.At(CautionPlace.AboveTheRanking).Select(caution => $"**First:** {Escaped(caution.Caution.Text)}"));
        Paragraph(Escaped(LessonWords.Opening(lesson)));
        PrintOrder();
        foreach (var step in lesson.Steps)
        {
            PrintStep(step);
        }

        PrintEnd();
        PrintAll(cautions.At(CautionPlace.AtTheFoot).Select(caution => $"**{(caution.Caution.Severity == CautionSeverity.Stop ? "Stop" : "Caution")}:** {Escaped(caution.Caution.Text)}"));
        Paragraph($"{Escaped(edition)}. Parts are rounded after adding. {Sentences.Education}");
        return page.ToString().TrimEnd('\n') + "\n";
    }

    private void PrintOrder()
    {
        Paragraph("## The order");
        foreach (var step in lesson.Steps)
        {
            page.Append(' ', 2 * step.Depth).Append(CultureInfo.InvariantCulture, $"- {step.Number}: {Escaped(step.Movement)}\n");
        }

        page.Append('\n');
    }

    private void PrintStep(LessonStep step)
    {
        Paragraph($"## {NumberText.Count(step.Number)}. {Escaped(Sentences.Capital(step.Movement))}");
        if (Sentences.First(step.Explained) is { Length: > 0 } first)
        {
            Paragraph($"**First:** {Escaped(first)}");
        }

        Paragraph($"{Escaped(LessonWords.Beside(step))}.");
        if (LessonWords.Question(step) is { } question)
        {
            Paragraph($"**Ask:** {Escaped(question)}");
        }

        if (!step.Changes.IsEmpty)
        {
            Paragraph($"**What you see:** {Escaped(string.Join(". ", step.Changes.Select(change => Sentences.Sentence(LessonWords.Change(change)).TrimEnd('.'))))}.");
        }

        Paragraph($"**{LessonWords.Move(step)}.**{(step.Cousin is not null && step.Parts.IsEmpty ? " Nothing that gives points differs." : "")}");
        PrintParts(step);
        Paragraph($"**Where it stands:** {Escaped(LessonWords.Place(step))}");
    }

    private void PrintParts(LessonStep step)
    {
        var parts = step.Cousin is null ? LessonWords.Marks(step.Explained) : step.Parts.Select(part => (part.Name, part.Points, LessonWords.Why(step, part)));
        var rows = parts.Select(part => $"| {Escaped(part.Item1)} | {(step.Cousin is null ? NumberText.Points(part.Item2) : NumberText.Signed(part.Item2))} | {Escaped(part.Item3)} |\n").ToList();
        if (rows.Count > 0)
        {
            var sum = step.Cousin is null ? NumberText.Points(step.Score) : NumberText.Signed(step.Difference);
            page.Append("| what | points | why |\n| --- | ---: | --- |\n").AppendJoin("", rows).Append(CultureInfo.InvariantCulture, $"| together | {sum} | |\n\n");
        }
    }

    private void PrintEnd()
    {
        Paragraph("## The list as it stands");
        foreach (var placement in lesson.Ranking.Placements)
        {
            page.Append(CultureInfo.InvariantCulture, $"- {placement.Rank}{(placement.IsTied ? "=" : "")} {Escaped(placement.Row.Movement.Name)}: {Escaped(placement.Tier.Name)}, {NumberText.Points(placement.Score)} points\n");
        }

        page.Append('\n');
        PrintAll(lesson.Ranking.LeftOut.Select(row => $"**Left out:** {Escaped(row.Row.Movement.Name)}. {Escaped(Sentences.Verdict(judgement.Explainer!.Explain(lesson.Ranking, row.Row.Movement)!))}"));
    }

    private void PrintAll(IEnumerable<string> paragraphs)
    {
        foreach (var paragraph in paragraphs)
        {
            Paragraph(paragraph);
        }
    }

    private void Paragraph(string text) => page.Append(text).Append("\n\n");

    private static string Escaped(string text) => MarkdownText.Escaped(text);
}
