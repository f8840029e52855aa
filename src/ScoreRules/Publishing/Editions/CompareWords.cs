using ScoreRules.Comparing;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Editions;

/// <summary>What differs between two houses, in words.</summary>
internal static class CompareWords
{
    /// <summary>A house: name and version.</summary>
    public static string House(Judgement judgement)
    {
        var edition = Edition.Of(judgement);
        return edition.Version.Length == 0 ? edition.House : $"{edition.House}, version {edition.Version}";
    }

    /// <summary>A block of rules.</summary>
    public static string Block(RuleBlock block) => block switch
    {
        RuleBlock.Person => "person and loads assumed",
        RuleBlock.Targets => "targets and benchmarks",
        RuleBlock.Movements => "movements and their facts",
        RuleBlock.Criteria => "criteria and weights",
        RuleBlock.CalledFacts => "called facts",
        RuleBlock.Awards => "points given and taken",
        RuleBlock.Limits => "caps and floors",
        RuleBlock.Exclusions => "what is left out",
        RuleBlock.Tiers => "borders of tiers",
        RuleBlock.Evidence => "studies and their weight",
        _ => "personal judgements",
    };

    /// <summary>A change with both places: <c>criterion "stretch" (new.rules:3; before: old.rules:4)</c>.</summary>
    public static string Change(RuleChange change) => (change.Old, change.New) switch
    {
        (null, { } added) => $"{change.Title}, added ({added})",
        ({ } gone, null) => $"{change.Title}, taken out (before: {gone})",
        var (old, now) => $"{change.Title} ({now}; before: {old})",
    };

    /// <summary>Where a movement stood before and stands now.</summary>
    public static string Move(PlacementChange change) => change.Kind switch
    {
        PlacementChangeKind.New => $"new here: {Now(change)}",
        PlacementChangeKind.Gone => $"no longer here; it was {Before(change)}",
        _ => $"from {Before(change)} to {Now(change)}",
    };

    /// <summary>What a block contributes: "-3.1 points and 0.5 tiers down"; null for neither points nor tiers.</summary>
    public static string? Part(BlockPart part)
    {
        var told = new[]
        {
            Rounding.Printed(part.Gap, 1) == 0 ? null : $"{NumberText.Signed(part.Gap)} points",
            Steps(part.Tier, "tier"),
        }.OfType<string>().ToList();
        return told.Count > 0 ? string.Join(" and ", told) : null;
    }

    /// <summary>A share or a coefficient with two decimals; "cannot be told" for none.</summary>
    public static string Figure(double? value) => value is { } number ? Rounding.Printed(number, 2).ToString("0.00", System.Globalization.CultureInfo.InvariantCulture) : "cannot be told";

    private static string Before(PlacementChange change) => Standing(change.Old, change.OldLeftOut);

    private static string Now(PlacementChange change) => Standing(change.New, change.NewLeftOut);

    private static string Standing(Placement? ranked, LeftOutRow? leftOut) =>
        ranked is not null ? $"{ranked.Tier.Name} (rank {NumberText.Count(ranked.Rank)}, {NumberText.Signed(ranked.Gap)})"
        : $"left out ({leftOut!.Rules[0].Info.Title}, {leftOut.Rules[0].Info.Location})";

    private static string? Steps(double steps, string what)
    {
        var size = Rounding.Printed(Math.Abs(steps), 1);
        return size == 0 ? null : $"{NumberText.Plain(size)} {what}{(size == 1 ? "" : "s")} {(steps > 0 ? "down" : "up")}";
    }
}
