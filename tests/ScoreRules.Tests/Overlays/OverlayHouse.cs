using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Tests.Overlays;

/// <summary>A small house of one text, and houses that build on it, each of one text.</summary>
internal static class OverlayHouse
{
    /// <summary>The base of all: three movements, two criteria, an award, a caution.</summary>
    public const string Base = """
        ruleset Longshore
          version 2.1.0
          checked 1 May 2031 by the head coach
          judges muscle growth
          unsuitable for youth
          explains with 2 reasons in favour, 1 against

        attribute steadiness
          rated 0 to 4

        attribute reach
          rated 0 to 4

        attribute equipment
          some of bar, cable

        attribute audience
          some of youth, older adult, in pain
          about the person

        muscle biceps

        target arms
          made of biceps 100 parts
          benchmark bar curl

        tiers
          Keep is from 5 points above the benchmark
          Level is within 5 points of the benchmark
          Swap is the rest

        criterion steady
          counts 10 parts
          reads steadiness
          worth 0% at 0, 100% at 4

        criterion long
          counts 30 parts give or take 6 parts
          reads reach
          worth 0% at 0, 100% at 4

        call far
          when reach is at least 3

        give 4 points
          named both at once
          when far
          and steadiness is at least 3

        never above Level
          named older people first
          when audience has older adult
          and steadiness is at most 1

        caution Mind the shoulder.
          named mind the shoulder
          when far
          severity medium

        movement bar curl
          trains arms
          steadiness is 2, reach is 1
          equipment has bar

        movement long curl
          trains arms
          steadiness is 3, reach is 4
          equipment has cable

        movement loose curl
          trains arms
          steadiness is 0, reach is 3
          equipment has nothing

        expect long curl is above bar curl
        """;

    /// <summary>Judges the base with houses on top, the lowest first.</summary>
    public static Judgement Judge(params string[] houses) => Judge(null, houses);

    /// <summary>Judges for a day.</summary>
    public static Judgement Judge(DateOnly? day, params string[] houses) => ScoreRules.Judge.Run(Sources(houses), profile: null, day);

    /// <summary>The files.</summary>
    public static HouseSources Sources(params string[] houses) =>
        new([.. houses.Prepend(Base).Select((text, i) => new HouseFile($"floor-{i}/house.rules", text, "", IsSpreadsheet: false) { Layer = i + 1 })], []) { Nearby = ["Longshore", "Quayside"] };

    /// <summary>The head of a house that builds on the base, and what it says.</summary>
    public static string Quayside(string says = "") => $"ruleset Quayside\n  version 1.0.0\n  builds on Longshore\n\n{says}\n";

    /// <summary>Codes and headlines of what is found.</summary>
    public static string[] Found(this Judgement judgement) => [.. judgement.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => $"{finding.Code} {finding.Headline}")];

    /// <summary>Every placement: target, movement, tier, score.</summary>
    public static string[] Placements(this Judgement judgement) =>
    [
        .. judgement.Rankings.SelectMany(ranking => ranking.Placements.Select(placement =>
            $"{ranking.Target.Name}: {placement.Row.Movement.Name}, {placement.Tier.Name}, {placement.Score.ToString("F6", System.Globalization.CultureInfo.InvariantCulture)}")),
    ];
}
