using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Houses;

/// <summary>All files of a house, by path, with what could not be read.</summary>
/// <param name="Files">The files.</param>
/// <param name="Findings">Files or stretches that could not be read.</param>
public sealed record HouseSources(ImmutableArray<HouseFile> Files, ImmutableArray<Diagnostic> Findings)
{
    // In brackets, as what is built into the program: no file can have this name.
    private const string QuestionPath = "(question)";

    /// <summary>Names of the houses in the folders beside.</summary>
    public ImmutableArray<string> Nearby { get; init; } = [];

    /// <summary>The rule text among the files, each with the house it belongs to.</summary>
    public IEnumerable<SourceText> Rules()
    {
        var top = Files.Max(file => (int?)file.Layer) ?? 0;
        return Files.Where(file => !file.IsSpreadsheet).Select(file => new SourceText(file.Path, file.Text) { Layer = file.Layer, IsOfBase = file.Layer > 0 && file.Layer < top });
    }

    /// <summary>The house with one more question, read like any other text of the house that stands on top.</summary>
    /// <param name="words">The question, with or without the word <c>ask</c>.</param>
    public HouseSources WithQuestion(string words)
    {
        var text = words.StartsWith("ask ", StringComparison.OrdinalIgnoreCase) ? words : $"ask {words}";
        return this with { Files = Files.Add(new HouseFile(QuestionPath, text + "\n", "", IsSpreadsheet: false) { Layer = Files.Max(file => (int?)file.Layer) ?? 0 }) };
    }

    /// <summary>Whether a place stands in a question added by <see cref="WithQuestion"/>.</summary>
    /// <param name="path">The name of the text.</param>
    public static bool IsQuestion(string path) => path == QuestionPath;
}
