using System.Collections.Immutable;
using System.Text;

namespace ScoreRules.Report.Rendering;

/// <summary>
/// The colours of the page: one hue from dark to light for tiers, which always stand beside their names. The tests measure
/// the contrast of every pair that carries text or meaning.
/// </summary>
internal static class Palette
{
    /// <summary>Each token with its colour on light and dark screens and on paper.</summary>
    public static ImmutableArray<(string Token, string Light, string Dark, string Paper)> Tokens { get; } =
    [
        ("paper", "#fbfaf7", "#0f181c", "#ffffff"),
        ("raised", "#ffffff", "#142127", "#ffffff"),
        ("ink", "#15252b", "#e7eff1", "#111c20"),
        ("ink2", "#4a5a61", "#a7b8be", "#3d4b51"),
        ("rule", "#dcdfdd", "#2b3b42", "#b9c2c4"),
        ("edge", "#e9ebe8", "#1d2b31", "#d5dbdc"),
        ("line", "#6f858d", "#8aa0a8", "#5c7077"),
        ("t1", "#0b3c4b", "#d6ebf2", "#0b3c4b"),
        ("t2", "#1d6379", "#9ccadb", "#1d6379"),
        ("t3", "#4d8ba0", "#649fb5", "#4d8ba0"),
        ("t4", "#92bac8", "#3e7084", "#92bac8"),
        ("t5", "#cfe1e7", "#284855", "#cfe1e7"),
        ("link", "#155a70", "#9ccadb", "#111c20"),
        ("solid", "#0b3c4b", "#d6ebf2", "#0b3c4b"),
        ("onsolid", "#ffffff", "#0c1a20", "#ffffff"),
        ("third", "#e4eff2", "#1a2f38", "#e4eff2"),
    ];

    /// <summary>The tokens as style rules: the device decides between light and dark unless the reader does.</summary>
    public static string Css()
    {
        var css = new StringBuilder();
        Block(css, ":root", token => token.Light);
        css.Append("@media (prefers-color-scheme:dark){");
        Block(css, ":root:not([data-theme=light])", token => token.Dark);
        css.Append("}\n");
        Block(css, ":root[data-theme=dark]", token => token.Dark);
        css.Append("@media print{");
        Block(css, ":root,:root[data-theme],:root:not([data-theme=light])", token => token.Paper);
        return css.Append("}\n").ToString();
    }

    private static void Block(StringBuilder css, string selector, Func<(string Token, string Light, string Dark, string Paper), string> colour) =>
        css.Append(selector).Append('{').AppendJoin(';', Tokens.Select(token => $"--{token.Token}:{colour(token)}")).Append("}\n");
}
