using System.Collections.Immutable;
using ScoreRules.Publishing.Editions;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Tests.Publishing.Editions;

/// <summary>Editions made up for tests, without files.</summary>
internal static class Published
{
    public static PublishedEdition Edition(string version, string date, params PublishedTarget[] targets) => Of("Willow", $"willow-{version}", version, date, targets);

    public static PublishedEdition Of(string house, string name, string version, string date, params PublishedTarget[] targets) => new(
        name,
        new EditionDocument(1, "0.1.0", "", new RulesetPart(house, version, null, null, [], null), "abc" + version, date, true, "us", null, []),
        [.. targets],
        []);

    public static PublishedTarget Target(string name, params (string Movement, string? Tier, double Score)[] rows) =>
        new(name, rows[0].Movement, [.. rows.Select((row, i) => new PublishedPlacement(row.Movement, row.Tier, row.Tier is null ? null : i + 1, row.Score))]);

    public static PublishedEdition Showing(this PublishedEdition edition, params string[] cautions) => edition with { Cautions = [.. cautions], CautionsForAll = [.. cautions.Take(1)] };

    public static ImmutableArray<ListedChange> Between(PublishedEdition older, PublishedEdition newer) => new PlacementDifference().Between(older, newer);
}
