using ScoreRules.Houses;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Documentation;

/// <summary>An example of <c>docs/language.md</c>.</summary>
/// <param name="Number">Its number on the page, from 0.</param>
/// <param name="Block">Its text and heading.</param>
/// <param name="Below">The house it builds on, or null.</param>
internal sealed record LanguageExample(int Number, MarkdownBlock Block, string? Below)
{
    /// <summary>The path of the example's own text in its house.</summary>
    public const string Path = "house/house.rules";

    /// <summary>The house, with another text in place of the example's own.</summary>
    public HouseSources With(string text)
    {
        var layer = Below is null ? 1 : 2;
        HouseFile[] below = Below is null ? [] : [File("base/house.rules", Below, 1)];
        HouseFile[] floor = Block.Info == "rules alone" ? [] : [File("shared/words.rules", LanguagePage.House, 0)];
        return new HouseSources([File(Path, text, layer), .. below, .. floor], []);
    }

    private static HouseFile File(string path, string text, int layer) => new(path, text, "", IsSpreadsheet: false) { Layer = layer };
}
