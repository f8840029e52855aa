using System.Collections.Immutable;
using System.Xml.Linq;
using ScoreRules.Publishing.Derivation;

namespace ScoreRules.Publishing.Pictures;

/// <summary>Load and muscle lengths over the range, one above the other, the lengthened third shaded through both.</summary>
/// <param name="shape">What is drawn.</param>
/// <param name="peak">The peak in words; none where there is no size.</param>
/// <param name="why">Why there is no load curve, as a sentence.</param>
/// <param name="left">Left edge: the start of the range.</param>
/// <param name="right">Right edge: its end.</param>
/// <param name="ink">Colours.</param>
internal sealed class CurvePanels(LoadShape shape, string? peak, string why, double left, double right, PictureInk ink)
{
    private const double LoadHeight = 96;
    private const double LengthHeight = 128;
    private const double Between = 26;
    private const double LabelStep = 15;

    private static readonly ImmutableArray<string?> Dashes = [null, "7 4", "2 4", "9 4 2 4", "12 5", "4 3", "1.5 6"];

    /// <summary>Height of both panels with their labels.</summary>
    public double Height => LengthTop + LengthHeight + 40;

    private double LengthTop => shape.Load is null ? 48 : LoadHeight + Between;

    /// <summary>The panels.</summary>
    /// <param name="top">Upper edge.</param>
    public XElement Draw(double top) => Shapes.Group([.. Third(top), .. Load(top), .. Lengths(top + LengthTop), .. Axis(top + LengthTop + LengthHeight)]);

    private IEnumerable<XElement> Third(double top)
    {
        if (shape.Lengths.IsEmpty)
        {
            yield break;
        }

        var width = (right - left) / 3;
        var from = shape.IsLongAtStart ? left : right - width;
        var above = shape.Load is null ? LengthTop - Between + 4 : 0;
        yield return Shapes.Box(new Spot(from, top + above), width, LengthTop + LengthHeight - above, ink.Third);
        yield return Shapes.Text(new Spot(from + (width / 2), top + LengthTop - 8), "lengthened third", ink.Ink, Anchor.Middle, size: 12.5);
    }

    private IEnumerable<XElement> Load(double top)
    {
        if (shape.Load is not { } load)
        {
            return [Shapes.Text(new Spot(left, top + 14), why, ink.Ink2)];
        }

        return
        [
            .. Frame(top, LoadHeight, peak is null ? ["peak", "", "0"] : ["peak", peak, "0"]),
            Shapes.Path(Curve(load, top, LoadHeight), ink.Deep, 2.75, shape.IsAssumed ? "5 5" : null),
            .. Helping(load, top),
            Shapes.Text(new Spot(right + 10, top + (LoadHeight * (1 - Math.Clamp(load[^1], 0, 1))) + 4), shape.IsAssumed ? "load, even assumed" : "load on the joint", ink.Ink, isStrong: true, size: 12.5),
        ];
    }

    // Where the load helps, the curve lies on the floor and says so.
    private IEnumerable<XElement> Helping(ImmutableArray<double> load, double top)
    {
        var helping = Enumerable.Range(0, load.Length).Where(step => load[step] < 0).ToList();
        return helping.Count * 6 < load.Length ? []
            : [Shapes.Text(new Spot(left + ((right - left) * helping.Average() / (load.Length - 1)), top + LoadHeight - 8), "the load helps", ink.Ink2, Anchor.Middle, size: 12.5)];
    }

    private IEnumerable<XElement> Lengths(double top)
    {
        if (shape.Lengths.IsEmpty)
        {
            return [Shapes.Text(new Spot(left, top + 14), "How long the muscles are is not known.", ink.Ink2)];
        }

        var places = Labels([.. shape.Lengths.Select(length => top + (LengthHeight * (1 - length.Lengths[^1])) + 4)], top + 6, top + LengthHeight + 4);
        return
        [
            .. Frame(top, LengthHeight, ["longest", "", "shortest"]),
            .. shape.Lengths.Select((length, index) => Shapes.Path(Curve(length.Lengths, top, LengthHeight), index == 0 ? ink.Deep : ink.Strong, index == 0 ? 2.75 : 2, Dashes[index % Dashes.Length])),
            .. shape.Lengths.SelectMany((length, index) => Key(length.Muscle, index, places[index])),
        ];
    }

    // A piece of the line before the name, so that lines that run together can still be told apart.
    private IEnumerable<XElement> Key(string muscle, int index, double at) => shape.Lengths.Length == 1
        ? [Shapes.Text(new Spot(right + 10, at), muscle, ink.Ink, isStrong: true, size: 12.5)]
        :
        [
            Shapes.Line(new Spot(right + 10, at - 4), new Spot(right + 36, at - 4), index == 0 ? ink.Deep : ink.Strong, index == 0 ? 2.75 : 2, Dashes[index % Dashes.Length]),
            Shapes.Text(new Spot(right + 42, at), muscle, ink.Ink, size: 12.5),
        ];

    private IEnumerable<XElement> Frame(double top, double height, ImmutableArray<string> words) =>
    [
        Shapes.Line(new Spot(left, top), new Spot(right, top), ink.Rule, 1),
        Shapes.Line(new Spot(left, top + height), new Spot(right, top + height), ink.Rule, 1),
        Shapes.Text(new Spot(left - 8, top + 4), words[0], ink.Ink2, Anchor.End, size: 12.5),
        Shapes.Text(new Spot(left - 8, top + 20), words[1], ink.Ink2, Anchor.End, size: 12.5),
        Shapes.Text(new Spot(left - 8, top + height + 4), words[2], ink.Ink2, Anchor.End, size: 12.5),
    ];

    private IEnumerable<XElement> Axis(double bottom) =>
    [
        .. new[] { (left, 0), ((left + right) / 2, shape.Angles.Length / 2), (right, shape.Angles.Length - 1) }
            .Select(mark => Shapes.Text(new Spot(mark.Item1, bottom + 18), $"{DeriveWords.Number(shape.Angles[mark.Item2], 0)}°", ink.Ink2, Anchor.Middle, size: 12.5)),
        Shapes.Text(new Spot(left, bottom + 34), "start", ink.Ink2, Anchor.Middle, size: 12.5),
        Shapes.Text(new Spot(right, bottom + 34), "end", ink.Ink2, Anchor.Middle, size: 12.5),
    ];

    private IEnumerable<Spot> Curve(ImmutableArray<double> values, double top, double height) =>
        values.Select((value, step) => new Spot(left + ((right - left) * step / (values.Length - 1)), top + (height * (1 - Math.Clamp(value, 0, 1)))));

    // Names keep the order of their lines and stand at least a line apart.
    private static double[] Labels(double[] wanted, double highest, double lowest)
    {
        var order = Enumerable.Range(0, wanted.Length).OrderBy(index => wanted[index]).ThenBy(index => index).ToList();
        var places = new double[wanted.Length];
        var last = double.NegativeInfinity;
        foreach (var index in order)
        {
            places[index] = last = Math.Max(Math.Max(wanted[index], highest), last + LabelStep);
        }

        var over = Math.Max(0, last - lowest);
        return [.. places.Select(place => place - over)];
    }
}
