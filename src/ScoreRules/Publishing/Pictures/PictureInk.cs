namespace ScoreRules.Publishing.Pictures;

/// <summary>The colours of a picture: one hue in steps of depth, so that it reads in grey.</summary>
/// <param name="Paper">Ground; empty for none.</param>
/// <param name="Ink">Body and text.</param>
/// <param name="Ink2">Secondary text.</param>
/// <param name="Rule">Axes and floor.</param>
/// <param name="Line">Lines of pull.</param>
/// <param name="Deep">The main curve.</param>
/// <param name="Strong">Loads and levers.</param>
/// <param name="Middle">Further curves.</param>
/// <param name="Soft">Pads and seats.</param>
/// <param name="Third">The lengthened third.</param>
public sealed record PictureInk(string Paper, string Ink, string Ink2, string Rule, string Line, string Deep, string Strong, string Middle, string Soft, string Third)
{
    /// <summary>On white, for a file of its own and for print.</summary>
    public static PictureInk Light { get; } = new("#ffffff", "#15252b", "#4a5a61", "#b9c2c4", "#6f858d", "#0b3c4b", "#1d6379", "#4d8ba0", "#92bac8", "#e4eff2");

    /// <summary>Of the page it is put into, which names its colours --ink, --ink2, --rule, --line, --t1 to --t4 and --third.</summary>
    public static PictureInk OfPage { get; } = new("", "var(--ink)", "var(--ink2)", "var(--rule)", "var(--line)", "var(--t1)", "var(--t2)", "var(--t3)", "var(--t4)", "var(--third)");
}
