using ScoreRules.Evidence;

namespace ScoreRules.Publishing;

/// <summary>How the principles fare against several studies together.</summary>
/// <param name="Better">Findings that one side is better.</param>
/// <param name="Hits">Of those, how many the principles had the right way round.</param>
/// <param name="HitsFromOthers">The same with all other studies weighed, each study left out in turn.</param>
/// <param name="Alike">Findings of no difference.</param>
/// <param name="MeanGap">The mean size of the difference that the principles expect there, in points; 0 without any.</param>
public sealed record StudyTotals(int Better, int Hits, int HitsFromOthers, int Alike, double MeanGap)
{
    /// <summary>Adds up marks.</summary>
    public static StudyTotals Of(IReadOnlyCollection<MarkedClaim> marks)
    {
        var better = marks.Where(mark => mark.Direction != 0).ToList();
        var alike = marks.Where(mark => mark.Direction == 0).ToList();
        return new StudyTotals(better.Count, better.Count(mark => mark.Mark == ClaimMark.Hit), better.Count(mark => mark.MarkFromOthers == ClaimMark.Hit), alike.Count, alike.Count == 0 ? 0 : alike.Average(mark => Math.Abs(mark.PrincipleLead)));
    }

    /// <summary>The same in a sentence.</summary>
    internal static string Sentence(IReadOnlyCollection<MarkedClaim> marks)
    {
        var totals = Of(marks);
        var better = totals.Better == 0 ? "" : $"Direction: right in {NumberText.Count(totals.Hits)} of {NumberText.Count(totals.Better)} on principle, in {NumberText.Count(totals.HitsFromOthers)} with all other studies. ";
        return (better + (totals.Alike == 0 ? "" : $"Where no difference was found, the principles expect {NumberText.Points(totals.MeanGap)} points on average.")).TrimEnd();
    }
}
