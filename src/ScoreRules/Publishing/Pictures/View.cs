using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Figures;

namespace ScoreRules.Publishing.Pictures;

/// <summary>Puts points of the room on paper.</summary>
/// <param name="From">From where the body is seen.</param>
/// <param name="Scale">Units of the picture for a metre.</param>
/// <param name="Origin">Where what stays put in the movement lies.</param>
internal sealed record View(Viewpoint From, double Scale, Spot Origin)
{
    // A view from the front or above is taken only where it shows clearly more than the side does.
    private const double Clearly = 1.1;
    private const double Lying = 0.7;

    /// <summary>The view in words, for a trunk that points its head that way.</summary>
    public static string Words(Viewpoint from, Vector3 head) => from switch
    {
        Viewpoint.Front when head.X < -Lying => "Seen from the feet",
        Viewpoint.Front when head.X > Lying => "Seen from the head",
        Viewpoint.Front => "Seen from the front",
        Viewpoint.Above => "Seen from above",
        _ => "Seen from the side",
    };

    public Spot Of(Vector3 point) => Origin + (Scale * Flat(From, point));

    /// <summary>The same way on paper, length 1 where it lies in the plane of the paper.</summary>
    public Spot Way(Vector3 direction) => Flat(From, direction);

    /// <summary>The view that shows most of what moves.</summary>
    public static Viewpoint Best(ImmutableArray<BodyFigure> figures)
    {
        var seen = new[] { Viewpoint.Side, Viewpoint.Front, Viewpoint.Above }.Select(from => (From: from, Moved: Moved(figures, from))).ToList();
        var most = seen.MaxBy(view => view.Moved);
        return most.Moved > Clearly * seen[0].Moved ? most.From : Viewpoint.Side;
    }

    public static Spot Flat(Viewpoint from, Vector3 point) => from switch
    {
        Viewpoint.Front => new Spot(-point.Z, -point.Y),
        Viewpoint.Above => new Spot(point.Z, -point.X),
        _ => new Spot(point.X, -point.Y),
    };

    private static double Moved(ImmutableArray<BodyFigure> figures, Viewpoint from) =>
        figures.Zip(figures.Skip(1), (before, after) => Joints(before).Zip(Joints(after), (one, other) => Flat(from, other - one).Length).Sum()).Sum();

    private static IEnumerable<Vector3> Joints(BodyFigure figure) =>
        [figure.Hip, figure.Shoulder, .. figure.Arm.IsStated ? figure.Arm.Joints : [], .. figure.Leg.IsStated ? figure.Leg.Joints : []];
}
