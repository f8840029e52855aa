using System.Xml.Linq;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Figures;

namespace ScoreRules.Publishing.Pictures;

/// <summary>A load: what holds it, its line of pull, the arrow, and the lever from the working joint to the line.</summary>
internal static class LoadDrawing
{
    private const double Arrow = 44;
    private const double Reach = 30;
    private const double Least = 0.35;
    private const double ShortestLever = 6;

    public static IEnumerable<XElement> Of(LoadLine load, Vector3 joint, View view, PictureInk ink)
    {
        var (at, way) = (view.Of(load.At), view.Way(load.Direction));
        if (way.Length < Least)
        {
            // Along the line of sight there is no arrow to be seen.
            yield return Shapes.Disc(at, 6, Ground(ink), ink.Strong, 2.5);
            yield return Shapes.Disc(at, 1.8, ink.Strong);
            yield break;
        }

        var along = way.Unit();
        foreach (var shape in Lever(load, view.Of(joint), at, along, ink))
        {
            yield return shape;
        }

        yield return Shapes.Line(at, at + (Arrow * along), Ground(ink), 5);
        yield return Shapes.Arrow(at, at + (Arrow * along), ink.Strong);
        yield return Shapes.Disc(at, load.Kind == LoadKind.Weight ? 7 : 5, load.Kind is LoadKind.Pad ? ink.Soft : ink.Strong, ink.Strong, 2);
    }

    /// <summary>What the load is called beside its arrow.</summary>
    private static string Word(LoadKind kind) => kind switch
    {
        LoadKind.Weight => "weight",
        LoadKind.BodyWeight => "body weight",
        LoadKind.Cable => "cable",
        LoadKind.Band => "band",
        LoadKind.Pad => "pad",
        _ => "platform",
    };

    /// <summary>The colour under what is drawn.</summary>
    public static string Ground(PictureInk ink) => ink.Paper.Length > 0 ? ink.Paper : "var(--paper)";

    /// <summary>That word: beside an upright arrow, on the side away from the body, and over a level one.</summary>
    public static XElement Label(LoadLine load, Spot body, View view, PictureInk ink)
    {
        const double Beside = 12;
        var (at, way) = (view.Of(load.At), view.Way(load.Direction));
        var tip = at + (Arrow * way.Unit());
        var isUpright = Math.Abs(way.Y) > Math.Abs(way.X) || way.Length < Least;
        var isRight = at.X >= body.X;
        return isUpright
            ? Shapes.Text(new Spot(at.X + (isRight ? Beside : -Beside), ((at.Y + tip.Y) / 2) + 8), Word(load.Kind), ink.Strong, isRight ? Anchor.Start : Anchor.End, isStrong: true, size: 12.5, halo: Ground(ink))
            : Shapes.Text(new Spot((at.X + tip.X) / 2, Math.Min(at.Y, tip.Y) - 10), Word(load.Kind), ink.Strong, Anchor.Middle, isStrong: true, size: 12.5, halo: Ground(ink));
    }

    private static IEnumerable<XElement> Lever(LoadLine load, Spot joint, Spot at, Spot along, PictureInk ink)
    {
        var along0 = (joint - at).Dot(along);
        var foot = at + (along0 * along);
        var (first, last) = (Math.Min(along0, 0) - Reach, Math.Max(along0, Arrow) + Reach);
        yield return Shapes.Line(at + (first * along), at + (last * along), ink.Line, 1.2, "4 4");
        if (load.HasLever && (joint - foot).Length > ShortestLever)
        {
            yield return Shapes.Line(joint, foot, ink.Strong, 2, "1.5 4");
        }
    }
}
