using System.Xml.Linq;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Modelling;
using ScoreRules.Publishing.Derivation;

namespace ScoreRules.Publishing.Pictures;

/// <summary>
/// A movement as a picture (SVG): three figures with the line of pull, and load and muscle lengths over the range under them. No script,
/// nothing fetched; the same movement gives the same bytes. Its title and description say in words what it shows.
/// </summary>
public static class MovementPicture
{
    private const double Width = 790;
    private const double Left = 122;
    private const double Right = 552;
    private const double Top = 52;
    private const string Fonts = "Inter, -apple-system, 'Segoe UI', Roboto, 'Noto Sans', sans-serif";

    /// <summary>The picture as a document.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="derived">What mechanics derives.</param>
    /// <param name="ink">Colours; null for those on white.</param>
    /// <returns>Null when too little is stated to place a body.</returns>
    public static string? Draw(BoundRuleset ruleset, DerivedMovement derived, PictureInk? ink = null) => Element(ruleset, derived, ink ?? PictureInk.Light)?.ToString(SaveOptions.None).ReplaceLineEndings("\n") is { } drawn ? drawn + "\n" : null;

    /// <summary>The picture as an element, to be put into a page.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="derived">What mechanics derives.</param>
    /// <param name="ink">Colours.</param>
    /// <returns>Null when too little is stated to place a body.</returns>
    public static XElement? Element(BoundRuleset ruleset, DerivedMovement derived, PictureInk ink)
    {
        if (derived.Facts is not { } facts || MovementFigures.Of(ruleset, derived) is not { } figures)
        {
            return null;
        }

        var strip = new FigureStrip(figures, ink);
        var panels = Panels(facts, ink);
        var key = PictureWords.Key(strip.Words, figures, LoadShape.Of(facts));
        var curves = Top + FigureStrip.Height + 46;
        var height = curves + panels.Height + (key.Length * 18) + 8;
        return new XElement(
            Shapes.Svg + "svg", Frame(derived, height), Words(derived, facts, strip),
            ink.Paper.Length == 0 ? null : Shapes.Box(default, Width, height, ink.Paper),
            Heading(derived, facts, ink),
            strip.Draw(Top, [Left, (Left + Right) / 2, Right]),
            panels.Draw(curves),
            key.Select((line, index) => Shapes.Text(new Spot(Left - 64, curves + panels.Height + 12 + (18 * index)), line, ink.Ink2, size: 12.5)));
    }

    private static CurvePanels Panels(MovementFacts facts, PictureInk ink)
    {
        var shape = LoadShape.Of(facts);
        var peak = shape.Moments is not null && facts["peak moment"] is { Value: { } moment } most ? DeriveWords.Value(most.Fact, moment) : null;
        return new CurvePanels(shape, peak, PictureWords.WhyNoLoad(facts), Left, Right, ink);
    }

    private static IEnumerable<XAttribute> Frame(DerivedMovement derived, double height) =>
    [
        new("viewBox", $"0 0 {Shapes.Number(Width)} {Shapes.Number(height)}"), Shapes.At("width", Width), Shapes.At("height", height), new("role", "img"),
        new("aria-labelledby", $"{Id(derived)}-title {Id(derived)}-desc"), new("font-family", Fonts),
    ];

    private static IEnumerable<XElement> Words(DerivedMovement derived, MovementFacts facts, FigureStrip strip) =>
    [
        new(Shapes.Svg + "title", new XAttribute("id", $"{Id(derived)}-title"), $"{Sentences.Capital(derived.Movement.Name)}: load and length of the {derived.Target.Name}"),
        new(Shapes.Svg + "desc", new XAttribute("id", $"{Id(derived)}-desc"), PictureWords.Description(derived, facts, strip.Words)),
    ];

    private static XElement Heading(DerivedMovement derived, MovementFacts facts, PictureInk ink) => Shapes.Group(
        Shapes.Text(new Spot(Left - 64, 28), Sentences.Capital(derived.Movement.Name), ink.Ink, isStrong: true, size: 17),
        Shapes.Text(new Spot(Width - 24, 28), $"{derived.Target.Name}, {DeriveWords.Motion(facts.Profile.Mechanism.WorkingJoint)}", ink.Ink2, Anchor.End));

    private static string Id(DerivedMovement derived) =>
        string.Concat(NameText.Key($"{derived.Movement.Name} {derived.Target.Name}").Select(sign => char.IsAsciiLetterOrDigit(sign) ? sign : '-')).Trim('-');
}
