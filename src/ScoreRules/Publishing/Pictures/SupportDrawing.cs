using System.Xml.Linq;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Figures;

namespace ScoreRules.Publishing.Pictures;

/// <summary>Pads, seat and floor, seen from the side, where the movement says that the body rests on something.</summary>
internal static class SupportDrawing
{
    private const double Gap = 0.09;
    private const double Width = 9;
    private const double Upright = 0.35;

    public static IEnumerable<XElement> Of(BodyFigure figure, IReadOnlyCollection<string> supports, View view, PictureInk ink)
    {
        if (view.From != Viewpoint.Side)
        {
            yield break;
        }

        foreach (var (from, to) in supports.SelectMany(support => Pads(figure, support)))
        {
            yield return Shapes.Line(view.Of(from), view.Of(to), ink.Soft, Width);
        }

        if (figure.IsOnBallOfFoot)
        {
            yield return Shapes.Line(view.Of(new Vector3(-0.06, -0.05, 0)), view.Of(new Vector3(0.12, -0.05, 0)), ink.Soft, Width);
        }
        else if (supports.Contains("feet"))
        {
            var floor = figure.Leg.Joints.Min(joint => joint.Y) - 0.02;
            var ankle = figure.Leg.Joints[2].X;
            yield return Shapes.Line(view.Of(new Vector3(ankle - 0.35, floor, 0)), view.Of(new Vector3(ankle + 0.5, floor, 0)), ink.Rule, 2);
        }
    }

    private static IEnumerable<(Vector3 From, Vector3 To)> Pads(BodyFigure figure, string support)
    {
        var trunk = figure.Shoulder - figure.Hip;
        var (back, front) = (-Gap * figure.Trunk.X, Gap * figure.Trunk.X);
        var isUpright = figure.Trunk.Y.Y > Upright;
        return support switch
        {
            "back" => [(figure.Hip + back + (0.05 * trunk), figure.Shoulder + back)],
            "upper-back" => [(figure.Hip + back + (0.55 * trunk), figure.Shoulder + back)],
            "chest" => [(figure.Hip + front + (0.35 * trunk), figure.Shoulder + front)],
            "pelvis" when isUpright => [Under(figure.Hip + new Vector3(-0.12, 0, 0), figure.Hip + new Vector3(0.25, 0, 0))],
            "pelvis" => [Under(figure.Hip - (0.05 * trunk), figure.Hip + (0.2 * trunk))],
            "upper arm" => [Under(figure.Arm.Joints[0] + (0.3 * (figure.Arm.Joints[1] - figure.Arm.Joints[0])), figure.Arm.Joints[1])],
            "knees" or "one knee" => [Under(figure.Leg.Joints[1] - new Vector3(0.12, 0, 0), figure.Leg.Joints[1] + new Vector3(0.12, 0, 0))],
            "thighs" when !isUpright => [Under(figure.Hip + (0.3 * (figure.Leg.Joints[1] - figure.Hip)), figure.Hip + (0.9 * (figure.Leg.Joints[1] - figure.Hip)))],
            "shoulders" when !isUpright => [Under(figure.Shoulder - new Vector3(0.12, 0, 0), figure.Shoulder + new Vector3(0.12, 0, 0))],
            _ => [],
        };
    }

    // On the lower side of a segment.
    private static (Vector3 From, Vector3 To) Under(Vector3 from, Vector3 to)
    {
        var along = (to - from).Unit();
        var across = new Vector3(along.Y, -along.X, 0);
        var below = across.Y <= 0 ? across : -across;
        return (from + (Gap * below), to + (Gap * below));
    }
}
