using System.Collections.Immutable;
using System.Xml.Linq;
using ScoreRules.Modelling;
using ScoreRules.Publishing.Derivation;

namespace ScoreRules.Publishing.Pictures;

/// <summary>Three figures side by side: start, middle and end, at one scale.</summary>
internal sealed class FigureStrip
{
    public const double Height = 236;
    private const double CellWidth = 214;
    private const double LargestScale = 132;
    private const double Room = 26;

    private static readonly ImmutableArray<string> Places = ["start", "middle", "end"];

    private readonly MovementFigures movement;
    private readonly ImmutableArray<Silhouette> bodies;
    private readonly Viewpoint from;
    private readonly PictureInk ink;

    public FigureStrip(MovementFigures movement, PictureInk ink)
    {
        (this.movement, this.ink, from) = (movement, ink, View.Best(movement.Figures));
        bodies = [.. movement.Figures.Select(figure => Silhouette.Of(figure, from, movement.IsBilateral))];
    }

    /// <summary>From where the body is seen.</summary>
    public string Words => View.Words(from, movement.Figures[0].Trunk.Y);

    /// <summary>The figures and their captions.</summary>
    /// <param name="top">Upper edge.</param>
    /// <param name="centres">Middle of each cell.</param>
    public XElement Draw(double top, ImmutableArray<double> centres)
    {
        var flat = bodies.SelectMany(body => body.Points(from)).Select(point => View.Flat(from, point)).ToList();
        var (left, right, upper, lower) = (flat.Min(spot => spot.X), flat.Max(spot => spot.X), flat.Min(spot => spot.Y), flat.Max(spot => spot.Y));
        var scale = Math.Min(LargestScale, Math.Min((CellWidth - (2 * Room)) / (right - left), (Height - (2 * Room)) / (lower - upper)));
        var middle = new Spot((left + right) / 2, (upper + lower) / 2);
        return Shapes.Group(bodies.Select((body, index) => Cell(body, index, new View(from, scale, new Spot(centres[index], top + (Height / 2)) - (scale * middle)), new Spot(centres[index], top + Height + 14))));
    }

    private XElement Cell(Silhouette body, int index, View view, Spot caption) => Shapes.Group(
    [
        FigureDrawing.Of(body, movement.Supports, view, ink),
        .. index == 0 ? body.Loads.Take(1).Select(load => LoadDrawing.Label(load, view.Of(0.5 * (body.Figure.Hip + body.Figure.Shoulder)), view, ink)) : [],
        Shapes.Text(caption, $"{Places[index]}, {DeriveWords.Number(body.Figure.AngleDegrees, 0)}°", ink.Ink, Anchor.Middle, isStrong: true),
    ]);
}
