using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>One line of an answer: a sentence, with its numbers for programs.</summary>
/// <param name="Label">What kind of line it is, such as "Against"; empty where the line above says so.</param>
/// <param name="Text">The sentence.</param>
/// <param name="Depth">0 for a line of its own, 1 and more for what stands behind the line above.</param>
/// <param name="Figures">Its names and numbers, unrounded.</param>
internal sealed record AnswerLine(string Label, string Text, int Depth, FiguresPart Figures)
{
    /// <summary>A line of its own.</summary>
    public static AnswerLine Of(string label, string text, FiguresPart? figures = null) => new(label, text, 0, figures ?? new FiguresPart());

    /// <summary>What stands behind the line above.</summary>
    public static AnswerLine Behind(string text, int depth = 1, FiguresPart? figures = null) => new("", text, depth, figures ?? new FiguresPart());
}
