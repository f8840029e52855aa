using ScoreRules.Publishing.Editions;
using ScoreRules.Publishing.Json;
using ScoreRules.Report;
using ScoreRules.Teaching;

namespace ScoreRules.ReportTests;

/// <summary>Lessons and lists of editions for the tests.</summary>
internal static class Lessons
{
    public static string Page(string house, string target) => LessonReport.Page(Houses.Shipped(house), Of(house, target));

    public static string Slides(string house, string target) => LessonReport.Slides(Houses.Shipped(house), Of(house, target));

    public static Lesson Of(string house, string target) => Lesson.Of(Houses.Shipped(house), Houses.Shipped(house).Rankings.Single(ranking => ranking.Target.Name == target));

    /// <summary>Two invented editions of one house and one of another.</summary>
    public static string List()
    {
        PublishedTarget[] before = [Target("lower legs", ("plain raise", "High", 90), ("bent raise", "Low", 20), ("a raise with a very long name that somebody thought of one evening", "Low", 10))];
        PublishedTarget[] after = [Target("lower legs", ("bent raise", "High", 95), ("plain raise", "Low", 40), ("<script>alert(1)</script>", "Low", 3)), Target("hands", ("grip", "High", 10))];
        var older = Edition("Willow", "willow-1.0.0", "1.0.0", "2031-01-01", before) with { Cautions = ["Stop at pain."] };
        var newer = Edition("Willow", "willow-1.1.0", "1.1.0", "2031-06-01", after) with { Cautions = ["Stop at pain.", "Hold a rail."], CautionsForAll = ["Stop at pain."] };
        return EditionListReport.Render(EditionList.Of([older, newer, Edition("Alder", "alder-2.0.0", "2.0.0", "2030-01-01", before)], new PlacementDifference()));
    }

    private static PublishedTarget Target(string name, params (string Movement, string Tier, double Score)[] rows) =>
        new(name, null, [.. rows.Select((row, i) => new PublishedPlacement(row.Movement, row.Tier, i + 1, row.Score))]);

    private static PublishedEdition Edition(string house, string name, string version, string date, PublishedTarget[] targets) => new(
        name,
        new EditionDocument(1, "0.1.0", "", new RulesetPart(house, version, null, date, [new BasePart("Ash", "1.0.0")], null), "0123456789ab", date, true, "two invented people", "a third", [new EditionFilePart("page.html", null, 1, ""), new EditionFilePart("ranking.md", null, 1, "")]),
        [.. targets],
        []);
}
