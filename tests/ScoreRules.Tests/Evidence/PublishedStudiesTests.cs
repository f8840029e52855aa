using System.Globalization;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Evidence;

/// <summary>
/// The house of Longreach with its invented studies taken out and published direct comparisons of muscle growth put in (source column of
/// the reference file; read from abstracts or excerpts): "better" as found clearly better, "same" as found about the same, all weighed.
/// </summary>
public sealed class PublishedStudiesTests
{
    private static readonly Lazy<Judgement> Seeded = new(() =>
    {
        var sources = HouseFolder.Read(Repository.PathOf("rulesets", "longreach"));
        var studies = string.Concat(Rows().Select((row, number) => $"study Published-{number.ToString(CultureInfo.InvariantCulture)}\n  compares movements\n  found {row["favoured"]} is {(row["verdict"] == "better" ? "clearly better than" : "about the same as")} {row["other"]}\n  outcome muscle growth\n  weigh it\n  only for {row["target"]}\n\n"));
        return Judge.Run(sources with { Files = [.. sources.Files.Where(file => !file.Path.EndsWith("studies.rules", StringComparison.Ordinal) && !file.Path.EndsWith("expectations.rules", StringComparison.Ordinal)), new HouseFile("published.rules", studies, "", IsSpreadsheet: false) { Layer = 1 }] });
    });

    [Fact]
    public void All_of_them_count()
    {
        Seeded.Value.Findings.Where(finding => finding.Severity == Severity.Error).Select(DiagnosticText.Short).ShouldBeEmpty();
        Seeded.Value.Evidence!.Counted.Length.ShouldBe(Rows().Count);
    }

    /// <summary>Where a study found one better and principles agree by more than the word asks, nothing moves; where they fall short the lead grows.</summary>
    [Fact]
    public void No_favoured_movement_loses_its_lead()
    {
        foreach (var row in Rows().Where(row => row["verdict"] == "better"))
        {
            var (before, after) = Leads(row);
            after.ShouldBeGreaterThan(0, row["source"]);
            (after - before).ShouldBeGreaterThanOrEqualTo(before >= 10 ? -8 : -1e-9, $"{row["favoured"]} over {row["other"]}: {row["source"]}");
        }
    }

    /// <summary>Where a study found no difference, the lead that principles expect shrinks towards the 3 points that the house calls about the same.</summary>
    [Fact]
    public void A_lead_that_a_study_did_not_find_shrinks()
    {
        foreach (var row in Rows().Where(row => row["verdict"] == "same"))
        {
            var (before, after) = Leads(row);

            // Studies of cousins pull too: one pair that was within 3 points ends at 3.8.
            Math.Abs(after).ShouldBeLessThanOrEqualTo(Math.Max(3, Math.Abs(before)) + 1, $"{row["favoured"]} and {row["other"]}: {row["source"]}");
        }

        // Taken together the misses of the principles must come down.
        var same = Rows().Where(row => row["verdict"] == "same").Select(Leads).ToList();
        same.Average(lead => Math.Abs(lead.After)).ShouldBeLessThan(same.Average(lead => Math.Abs(lead.Before)) / 1.5);
    }

    private static List<IReadOnlyDictionary<string, string>> Rows() =>
        [.. ReferenceTable.Rows("longreach-against-studies.csv").Where(row => row["verdict"] is "better" or "same" && row["principleGap"].Length > 0)];

    private static (double Before, double After) Leads(IReadOnlyDictionary<string, string> row)
    {
        var ranking = Seeded.Value.Target(row["target"]);
        var (one, other) = (ranking.Of(Seeded.Value.Movement(row["favoured"]))!, ranking.Of(Seeded.Value.Movement(row["other"]))!);
        return (one.PrincipleScore - other.PrincipleScore, one.Score - other.Score);
    }
}
