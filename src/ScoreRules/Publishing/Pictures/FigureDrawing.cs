using System.Xml.Linq;
using ScoreRules.Mechanics.Figures;

namespace ScoreRules.Publishing.Pictures;

/// <summary>One stick figure.</summary>
internal static class FigureDrawing
{
    public static XElement Of(Silhouette body, IReadOnlyCollection<string> supports, View view, PictureInk ink) => Shapes.Group(
    [
        .. SupportDrawing.Of(body.Figure, supports, view, ink),
        .. view.From == Viewpoint.Above ? [] : body.Legs.Select(leg => Limb(leg, view, ink, 7)),
        .. Trunk(body, view, ink),
        .. body.Arms.Select(arm => Limb(arm, view, ink, arm.IsStated ? 6 : 4.5)),
        Shapes.Disc(view.Of(body.Figure.Head), BodyFigure.HeadRadius * 1.8 * view.Scale, ink.Ink),
        .. body.Loads.SelectMany((load, side) => LoadDrawing.Of(load, body.Joints[Math.Min(side, body.Joints.Length - 1)], view, ink)),
        .. body.Joints.Select(joint => Shapes.Disc(view.Of(joint), 5.5, LoadDrawing.Ground(ink), ink.Ink, 2.5)),
    ]);

    // What nobody states is thin and pale: it is there for looks only.
    private static XElement Limb(LimbLine limb, View view, PictureInk ink, double width) =>
        Shapes.Path(limb.Joints.Select(view.Of), limb.IsStated ? ink.Ink : ink.Rule, limb.IsStated ? width : 4);

    private static IEnumerable<XElement> Trunk(Silhouette body, View view, PictureInk ink)
    {
        yield return Shapes.Path([view.Of(body.Figure.Hip), view.Of(body.Figure.Shoulder), view.Of(body.Figure.Head)], ink.Ink, 7);
        foreach (var girdle in new[] { body.Shoulders, body.Hips }.Where(girdle => !girdle.IsEmpty))
        {
            yield return Shapes.Line(view.Of(girdle[0]), view.Of(girdle[1]), ink.Ink, 6);
        }
    }
}
