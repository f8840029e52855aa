using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Certainty;
using ScoreRules.Publishing;

namespace ScoreRules.Report.Views;

/// <summary>
/// The ranks in which the tries of one placement land, as columns of a small picture: from the best rank that is reached in one try of
/// two hundred to the worst, and the printed rank in any case. Lengths are in units of the picture.
/// </summary>
public sealed class RankSpread
{
    private const double Least = 0.005;
    private const int Tallest = 56;
    private const int Base = 72;
    private const double Gap = 3;
    private const int FewestColumns = 8;
    private const int MostLabels = 12;
    private const int FarApart = 3;
    private readonly int printed;
    private readonly RankColumn likeliest;
    private readonly int from;
    private readonly int to;

    /// <summary>Lays out one placement.</summary>
    public RankSpread(PlacementCertainty certainty)
    {
        printed = certainty.Placement.Rank;
        var own = printed - 1;
        var reached = certainty.Ranks.Select((share, rank) => (share, rank)).Where(pair => pair.share >= Least).Select(pair => pair.rank).Append(own).ToList();
        (from, to) = (reached.Min(), reached.Max());
        Columns = [.. Enumerable.Range(from, to - from + 1).Select(rank => new RankColumn(rank + 1, certainty.Ranks[rank], rank == own))];
        likeliest = Columns.MaxBy(column => column.Share)!;
    }

    /// <summary>Width of the picture.</summary>
    public static int Width => 280;

    /// <summary>Height of the picture.</summary>
    public static int Height => Base + 20;

    /// <summary>Where the names of ranks stand, from the top.</summary>
    public static string Below => Print(Base + 15);

    /// <summary>The ranks, best first.</summary>
    public ImmutableArray<RankColumn> Columns { get; }

    /// <summary>The same in words: "Rank 1 in 32 of 100 tries, rank 2 in 46".</summary>
    public string Words => string.Join(", ", Columns.Where(column => column.Share >= Least).Select((column, i) => $"{(i == 0 ? "Rank" : "rank")} {NumberText.Count(column.Rank)} in {CertaintyText.OfHundred(column.Share)}{(i == 0 ? " of 100 tries" : "")}"));

    /// <summary>The outline of all columns that are the printed rank, or of all that are not.</summary>
    public string Outline(bool own) =>
        string.Concat(Columns.Where(column => column.IsPrinted == own && column.Share >= Least).Select(column => $"M{Print(Slot * (column.Rank - 1 - from) + Gap / 2)} {Print(Base)}v{Print(-Rise(column))}h{Print(Slot - Gap)}v{Print(Rise(column))}z"));

    /// <summary>The middle of a column, from the left.</summary>
    public string Middle(RankColumn column) => Print(Slot * (column.Rank - 0.5 - from));

    /// <summary>Where the number above a column stands, from the top.</summary>
    public string Above(RankColumn column) => Print(Base - 4 - Rise(column));

    /// <summary>Whether a column has its number above it: all where there is room, else the printed rank and the most frequent one, unless they touch.</summary>
    public bool IsCounted(RankColumn column) =>
        column.Share >= Least && (Columns.Length <= MostLabels || column.IsPrinted || (column == likeliest && IsFarFromPrinted(column)));

    /// <summary>Whether a column has its rank below it: all where there is room, else the ends and the printed rank, unless they touch.</summary>
    public bool IsNamed(RankColumn column) =>
        Columns.Length <= MostLabels || column.IsPrinted || ((column.Rank == from + 1 || column.Rank == to + 1) && IsFarFromPrinted(column));

    private double Slot => (double)Width / Math.Max(FewestColumns, Columns.Length);

    private double Rise(RankColumn column) => Math.Max(1, column.Share / likeliest.Share * Tallest);

    private bool IsFarFromPrinted(RankColumn column) => Math.Abs(column.Rank - printed) >= FarApart;

    private static string Print(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
