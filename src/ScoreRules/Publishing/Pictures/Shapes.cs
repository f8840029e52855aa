using System.Globalization;
using System.Xml.Linq;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Pictures;

/// <summary>Elements of a picture; numbers with one decimal, so that the last bit of a sum never shows.</summary>
internal static class Shapes
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static XElement Group(params IEnumerable<XElement> inside) => new(Svg + "g", inside);

    public static XElement Line(Spot from, Spot to, string colour, double width, string? dashes = null) => Dashed(
        new XElement(Svg + "line", At("x1", from.X), At("y1", from.Y), At("x2", to.X), At("y2", to.Y), Stroke(colour, width), new XAttribute("stroke-linecap", "round")), dashes);

    public static XElement Path(IEnumerable<Spot> spots, string colour, double width, string? dashes = null) => Dashed(
        new XElement(
            Svg + "polyline", new XAttribute("points", string.Join(' ', spots.Select(spot => $"{Number(spot.X)},{Number(spot.Y)}"))),
            new XAttribute("fill", "none"), Stroke(colour, width), new XAttribute("stroke-linejoin", "round"), new XAttribute("stroke-linecap", "round")),
        dashes);

    public static XElement Disc(Spot at, double radius, string fill, string? edge = null, double width = 0) =>
        new(Svg + "circle", At("cx", at.X), At("cy", at.Y), At("r", radius), new XAttribute("fill", fill), edge is null ? null : Stroke(edge, width));

    public static XElement Box(Spot corner, double width, double height, string fill) =>
        new(Svg + "rect", At("x", corner.X), At("y", corner.Y), At("width", width), At("height", height), new XAttribute("fill", fill));

    /// <summary>An arrow; the head sits at its end.</summary>
    public static XElement Arrow(Spot from, Spot to, string colour)
    {
        const double Head = 9;
        const double Half = 4.5;
        var way = (to - from).Unit();
        var (neck, side) = (to - (Head * way), new Spot(-way.Y, way.X));
        Spot[] corners = [to, neck + (Half * side), neck - (Half * side)];
        var head = new XElement(Svg + "polygon", new XAttribute("points", string.Join(' ', corners.Select(spot => $"{Number(spot.X)},{Number(spot.Y)}"))), new XAttribute("fill", colour));
        return Group(Line(from, neck, colour, 3), head);
    }

    /// <summary>Words; the spot is on their base line.</summary>
    public static XElement Text(Spot at, string words, string colour, Anchor anchor = Anchor.Start, bool isStrong = false, double size = 13, string? halo = null) => new(
        Svg + "text", At("x", at.X), At("y", at.Y), new XAttribute("fill", colour), At("font-size", size),
        anchor == Anchor.Start ? null : new XAttribute("text-anchor", anchor == Anchor.Middle ? "middle" : "end"),
        isStrong ? new XAttribute("font-weight", "600") : null,
        halo is null ? null : new XAttribute[] { new("stroke", halo), new("stroke-width", "4"), new("stroke-linejoin", "round"), new("paint-order", "stroke") }, words);

    public static XAttribute At(string name, double value) => new(name, Number(value));

    public static string Number(double value) => Rounding.Printed(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private static IEnumerable<XAttribute> Stroke(string colour, double width) => [new("stroke", colour), At("stroke-width", width)];

    private static XElement Dashed(XElement shape, string? dashes)
    {
        if (dashes is not null)
        {
            shape.Add(new XAttribute("stroke-dasharray", dashes));
        }

        return shape;
    }
}
