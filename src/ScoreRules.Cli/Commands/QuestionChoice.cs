using ScoreRules.Houses;

namespace ScoreRules.Cli.Commands;

/// <summary>The house and the question meant by the words typed. A question may be typed as one quoted text or word by word.</summary>
/// <param name="House">The house.</param>
/// <param name="Question">The question; null when none is typed.</param>
internal sealed record QuestionChoice(string House, string? Question)
{
    /// <summary>What is meant: the first word is the house if there is such a folder or file; else, in a house, all words are the question.</summary>
    /// <exception cref="HouseException">No house is typed, and the current folder is none.</exception>
    public static QuestionChoice Of(string[] typed)
    {
        if (typed.Length == 0)
        {
            return new QuestionChoice(HouseChoice.Current(), null);
        }

        var namesHouse = Directory.Exists(typed[0]) || File.Exists(typed[0]) || !HouseFolder.IsHouse(".");
        var words = string.Join(' ', namesHouse ? typed[1..] : typed).Trim().TrimEnd('?').TrimEnd();
        return new QuestionChoice(namesHouse ? typed[0] : HouseChoice.Current(), words.Length == 0 ? null : words);
    }
}
