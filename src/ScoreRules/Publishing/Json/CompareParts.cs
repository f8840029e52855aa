using ScoreRules.Comparing;
using ScoreRules.Publishing.Editions;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Json;

/// <summary>A comparison as parts of its document.</summary>
internal static class CompareParts
{
    /// <summary>A caution that differs.</summary>
    public static CautionChangePart Caution(CautionChange change) => new(
        CautionLines.Word(change), change.Text, change.Old is { } old ? JsonParts.Rule(old.Info) : null, change.New is { } now ? JsonParts.Rule(now.Info) : null, change.NoLonger, change.Newly);

    /// <summary>A rule or fact that differs.</summary>
    public static ChangePart Change(RuleChange change) => new(CompareWords.Block(change.Block), change.Title, change.Old?.Path, change.Old?.Line, change.New?.Path, change.New?.Line);

    /// <summary>The lists of one target.</summary>
    public static ComparedTargetPart Target(TargetComparison target) => new(
        target.New.Target.Name, target.Common, target.TauB, target.Top?.Extrapolated, TargetComparison.Persistence,
        [.. target.Blocks.Select(one => new BlockAlonePart(CompareWords.Block(one.Block), one.Share, one.TauB))],
        [.. target.Changes.Select(Placement)]);

    private static PlacementChangePart Placement(PlacementChange change) => new(
        change.Movement, Kind(change.Kind), Standing(change.Old), Standing(change.New),
        [.. change.Parts.Select(part => new BlockPartPart(CompareWords.Block(part.Block), part.Gap, part.Rank, part.Tier, [.. part.Lines.Select(Change)]))]);

    private static StandingPart? Standing(Placement? placement) =>
        placement is null ? null : new StandingPart(placement.Rank, placement.Tier.Name, double.IsFinite(placement.Gap) ? placement.Gap : null);

    private static string Kind(PlacementChangeKind kind) => kind switch
    {
        PlacementChangeKind.OtherTier => "other tier",
        PlacementChangeKind.SameTier => "same tier",
        PlacementChangeKind.New => "new",
        PlacementChangeKind.Gone => "gone",
        PlacementChangeKind.NowLeftOut => "now left out",
        _ => "no longer left out",
    };
}
