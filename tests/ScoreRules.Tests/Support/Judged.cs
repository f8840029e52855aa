using System.Collections.Concurrent;
using ScoreRules.Catalogue;
using ScoreRules.Explanation;
using ScoreRules.Houses;
using ScoreRules.Tiering;

namespace ScoreRules.Tests.Support;

/// <summary>Houses judged once for all tests.</summary>
internal static class Judged
{
    private static readonly ConcurrentDictionary<string, Lazy<Judgement>> Once = new(StringComparer.Ordinal);

    public static Judgement Longreach => House("longreach");

    public static Judgement HarbourLane => House("harbour-lane");

    public static Judgement LindenCourt => House("linden-court");

    /// <summary>A shipped house by the name of its folder.</summary>
    public static Judgement House(string folder) => Once.GetOrAdd(folder, name => new Lazy<Judgement>(() => Judge.Run(HouseFolder.Read(Repository.PathOf("rulesets", name))))).Value;

    /// <summary>Judges rule text as a house of its own, without the shared folder.</summary>
    public static Judgement Text(params string[] files) =>
        Judge.Run(new HouseSources([.. files.Select((text, index) => new HouseFile($"file{index}.rules", text, "", IsSpreadsheet: false))], []));

    public static TargetRanking Target(this Judgement judgement, string target) => judgement.Rankings.Single(ranking => ranking.Target.Name == target);

    public static Movement Movement(this Judgement judgement, string name) => judgement.Catalogue.Find(name) ?? throw new InvalidOperationException(name);

    public static PlacementExplanation Explain(this Judgement judgement, string target, string movement) =>
        judgement.Explainer!.Explain(judgement.Target(target), judgement.Movement(movement))!;
}
