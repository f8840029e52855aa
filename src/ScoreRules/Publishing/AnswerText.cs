using Humanizer;
using ScoreRules.Answers;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Answers;

namespace ScoreRules.Publishing;

/// <summary>Answers for a terminal: the house, what comes first, each question with its answer, cautions, and how it was found.</summary>
/// <param name="judgement">The house, judged.</param>
public sealed class AnswerText(Judgement judgement)
{
    private const int MostNamed = 4;
    private readonly Explainer explainer = judgement.Explainer ?? throw new InvalidOperationException("Nothing was ranked.");

    /// <summary>The answers given, one below another.</summary>
    public string Print(IEnumerable<Answer> answers)
    {
        var block = new TextBlock();
        PrintHead(block);
        foreach (var page in answers.Select(AnswerWords.Of))
        {
            block.Blank();
            Print(block, page);
        }

        block.Blank();
        block.Wrapped("Points are rounded after adding. " + Sentences.Education);
        return block.ToString();
    }

    /// <summary>The question without the word that makes it a statement.</summary>
    internal static string Asked(QuestionDefinition question)
    {
        var words = question.Words.Trim();
        return words.StartsWith("ask ", StringComparison.OrdinalIgnoreCase) ? words[4..].Trim() : words;
    }

    private void PrintHead(TextBlock block)
    {
        if (judgement.Ruleset.House is { } house)
        {
            block.Wrapped($"{house.Name}, version {house.Version}");
        }

        if (judgement.Ruleset.Date is { } day)
        {
            block.Labelled("Judged for", Sentences.Day(day));
        }

        if (judgement.Profile is { } profile)
        {
            block.Labelled("Profile", profile.Name);
        }

        block.Wrapped(Sentences.Education);
    }

    private void Print(TextBlock block, AnswerPage page)
    {
        var cautions = AnswerCautions.Of(page.Answer.Rows, page.Answer.Judged(judgement).Explainer ?? explainer);
        block.Line(Asked(page.Answer.Question).Transform(To.SentenceCase));
        foreach (var (shown, _) in cautions.Where(caution => caution.Shown.Caution.Place == CautionPlace.AboveTheRanking))
        {
            block.Blank();
            block.Labelled("First", shown.Caution.Text);
        }

        foreach (var section in page.Sections)
        {
            block.Blank();
            PrintSection(block, section);
        }

        PrintCautions(block, [.. cautions.Where(caution => caution.Shown.Caution.Place != CautionPlace.AboveTheRanking)]);
        foreach (var note in page.Notes)
        {
            block.Labelled("How", note);
        }
    }

    private static void PrintSection(TextBlock block, AnswerSection section)
    {
        block.Wrapped(section.Target is null ? section.Lead : $"{section.Target.Transform(To.SentenceCase)}: {section.Lead}");
        foreach (var line in section.Lines)
        {
            block.Labelled(line.Label, line.Text, Gutter(line.Depth));
        }
    }

    private static int Gutter(int depth) => 16 + (2 * depth);

    private static void PrintCautions(TextBlock block, (ShownCaution Shown, System.Collections.Immutable.ImmutableArray<string> Movements)[] cautions)
    {
        if (cautions.Length > 0)
        {
            block.Blank();
        }

        foreach (var (shown, movements) in cautions)
        {
            var about = movements.Length <= MostNamed ? FactText.Join(movements) : $"{movements.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)} of these movements";
            var undecided = shown.IsUndecided ? " (Could not be told from the facts; shown to be careful.)" : "";
            block.Labelled(shown.Caution.Severity == CautionSeverity.Stop ? "Stop" : "Caution", $"{about}: {shown.Caution.Text}{undecided}");
        }
    }
}
