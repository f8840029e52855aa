using NetArchTest.Rules;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Architecture;

/// <summary>Folders are phases with one direction of dependency; each line of the table is one rule of the house.</summary>
public sealed class DirectionTests
{
    // In this order: a folder uses only what stands above it.
    private static readonly string[] Judging = ["Statistics", "Mechanics", "Weighting", "Catalogue", "Modelling", "Inference", "Scoring", "Evidence", "Tiering", "Profiles", "Explanation", "Certainty", "Guarding", "Choosing", "Comparing", "Teaching", "Answers", "Publishing", "Mending", "Starting"];

    private static readonly string[] Language = ["Text", "Diagnostics", "Syntax", "Formatting", "Overlays", "Binding"];

    public static TheoryData<string, string> Forbidden()
    {
        var rows = new TheoryData<string, string>();
        foreach (var (root, folders) in new[] { ("ScoreRules", Judging), ("ScoreRules.Language", Language) })
        {
            for (var i = 0; i < folders.Length; i++)
            {
                foreach (var below in folders.Skip(i + 1))
                {
                    rows.Add($"{root}.{folders[i]}", $"{root}.{below}");
                }
            }
        }

        foreach (var folder in Judging.Where(folder => folder != "Inference"))
        {
            rows.Add($"ScoreRules.{folder}", "NRules");
        }

        foreach (var folder in Language.Where(folder => folder != "Syntax"))
        {
            rows.Add($"ScoreRules.Language.{folder}", "Superpower");
        }

        foreach (var folder in Judging.Where(folder => folder != "Choosing"))
        {
            rows.Add($"ScoreRules.{folder}", "Google.OrTools");
        }

        foreach (var folder in Judging.Where(folder => folder != "Publishing"))
        {
            rows.Add($"ScoreRules.{folder}", "Humanizer");
        }

        rows.Add("ScoreRules.Language", "System.IO.File");
        rows.Add("ScoreRules.Language", "System.Console");
        rows.Add("ScoreRules", "System.Console");
        rows.Add("ScoreRules.Language", "NRules");
        rows.Add("ScoreRules.Mechanics", "ScoreRules.Language");
        rows.Add("ScoreRules.Weighting", "ScoreRules.Language");
        rows.Add("ScoreRules.Statistics", "ScoreRules.Language");
        return rows;
    }

    [Theory]
    [MemberData(nameof(Forbidden))]
    public void Nothing_in_one_namespace_uses_the_other(string from, string to)
    {
        var types = Types.InAssemblies([typeof(Judge).Assembly, typeof(Language.Binding.BoundRuleset).Assembly]);
        var inside = from == "ScoreRules" ? types.That().ResideInNamespaceMatching(@"^ScoreRules(\.|$)") : types.That().ResideInNamespaceMatching($@"^{from.Replace(".", @"\.", StringComparison.Ordinal)}(\.|$)");
        var result = inside.ShouldNot().HaveDependencyOnAny(to).GetResult();
        (result.FailingTypes ?? []).Select(type => type.FullName).ShouldBeEmpty();
    }

    [Fact]
    public void The_table_knows_every_folder()
    {
        Folders("ScoreRules").Except(["Houses"]).Order().ShouldBe(Judging.Order());
        Folders("ScoreRules.Language").Order().ShouldBe(Language.Order());
    }

    private static IEnumerable<string> Folders(string project) =>
        Directory.GetDirectories(Support.Repository.PathOf("src", project)).Select(folder => Path.GetFileName(folder)!).Where(name => name is not ("bin" or "obj"));
}
