using System.Collections.Concurrent;
using ScoreRules.Houses;
using ScoreRules.Report;

namespace ScoreRules.ReportTests;

/// <summary>Houses judged, and their pages made, once for all tests.</summary>
internal static class Houses
{
    /// <summary>A small house of its own whose movement has a hostile name.</summary>
    public const string HostileName = "<script>alert(1)</script>";

    private static readonly ConcurrentDictionary<string, Lazy<Judgement>> Once = new(StringComparer.Ordinal);
    private static readonly ConcurrentDictionary<string, Lazy<string>> Pages = new(StringComparer.Ordinal);

    public static string Root { get; } = FindRoot();

    /// <summary>The page of a house with one of its targets: the same parts, quicker to go through.</summary>
    public static string OneTarget => Pages.GetOrAdd("one target", _ => new Lazy<string>(() => WithTries(Longreach with { Rankings = [Longreach.Rankings.Single(ranking => ranking.Target.Name == "deltoids")] }))).Value;

    public static Judgement Longreach => Shipped("longreach");

    public static string LongreachPage => Page("longreach");

    public static Judgement Shipped(string folder) => Once.GetOrAdd(folder, name => new Lazy<Judgement>(() => Judge.Run(HouseFolder.Read(Path.Combine(Root, "rulesets", name))))).Value;

    public static string Page(string folder) => Pages.GetOrAdd(folder, name => new Lazy<string>(() => WithTries(Shipped(name)))).Value;

    /// <summary>Two movements, one of which is named like a script; its house's name and prose are no better.</summary>
    public static Judgement Hostile() => Judge.Run(new HouseSources([new HouseFile("house.rules", $$"""
        ruleset "</style>{{HostileName}}"
          version 1
          judges "<b>growth</b>"
          lets the reader guess first

        philosophy
          We like </title><img src=x onerror=alert(2)> and "quotes".

        muscle soleus

        attribute steadiness
          rated 0 to 4

        target calves
          made of soleus 100 parts
          benchmark plain raise

        tiers
          Above is from 5 points above the benchmark
          The rest is the rest

        criterion steadiness
          counts 10 parts
          reads steadiness
          worth 0% at 0, 100% at 4

        movement plain raise
          trains calves
          steadiness is 2

        movement "{{HostileName}}"
          trains calves
          steadiness is 4

        """, "", IsSpreadsheet: false)], []));

    private static string WithTries(Judgement judgement) => HouseReport.Render(judgement, slots: null, Certainty.HouseCertainty.Of(judgement));

    private static string FindRoot()
    {
        var at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "ScoreRules.sln")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}
