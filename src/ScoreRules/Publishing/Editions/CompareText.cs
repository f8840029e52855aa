using System.Collections.Immutable;
using Humanizer;
using ScoreRules.Comparing;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Editions;

/// <summary>What differs between two houses, for a terminal: cautions first, then each list with what moved and the lines behind it.</summary>
public sealed class CompareText(HouseComparison comparison)
{
    private const int MostLines = 3;
    private const int Gutter = 28;

    private readonly TextBlock block = new();

    /// <summary>The whole text.</summary>
    /// <param name="targets">The lists to print.</param>
    public string Print(IReadOnlyList<TargetComparison> targets)
    {
        block.Wrapped($"Old: {CompareWords.House(comparison.Old)}");
        block.Wrapped($"New: {CompareWords.House(comparison.New)}");
        block.Wrapped(Sentences.Education);
        CautionLines.Print(comparison.Cautions, block);
        PrintChanges();
        foreach (var target in targets.Where(target => !target.Changes.IsEmpty))
        {
            Print(target);
        }

        PrintSame(targets);
        return block.ToString();
    }

    private void PrintChanges()
    {
        block.Blank();
        var told = comparison.Blocks.Select(one => $"{CompareWords.Block(one)} ({NumberText.Count(comparison.Changes.Count(change => change.Block == one))})").ToList();
        block.Wrapped(told.Count == 0 ? "No rule and no fact differs in what it does." : $"What differs, and how often: {string.Join(", ", told)}.");
        foreach (var (old, now) in comparison.RenamedTiers)
        {
            block.Wrapped($"Tier \"{old.Name}\" is now called \"{now.Name}\".");
        }

        Named("Lists that only the old house has", comparison.GoneTargets.Select(target => target.Name));
        Named("Lists that only the new house has", comparison.NewTargets.Select(target => target.Name));
    }

    private void Named(string what, IEnumerable<string> names)
    {
        var all = names.ToList();
        if (all.Count > 0)
        {
            block.Wrapped($"{what}: {string.Join(", ", all)}.");
        }
    }

    private void Print(TargetComparison target)
    {
        block.Blank();
        block.Wrapped($"{Sentences.Sentence(target.New.Target.Name).TrimEnd('.')}: {Counts(target.Changes)}");
        block.Wrapped($"Order of the {"movement".ToQuantity(target.Common)} ranked in both: {CompareWords.Figure(target.TauB)} (Kendall's tau-b; 1 is the same order, -1 the opposite). Agreement at the top: {CompareWords.Figure(target.Top?.Extrapolated)} of 1 (rank-biased overlap, p = {NumberText.Plain(TargetComparison.Persistence)}).", 2);
        PrintBlocks(target);
        foreach (var change in target.Changes.Where(change => change.Kind != PlacementChangeKind.SameTier))
        {
            block.Labelled("  -", $"{change.Movement}: {CompareWords.Move(change)}", 4);
            PrintParts(change);
        }

        PrintSameTier(target);
    }

    private static string Counts(ImmutableArray<PlacementChange> changes)
    {
        var counts = new (string Words, int Count)[]
        {
            ("in another tier", Count(PlacementChangeKind.OtherTier)), ("now left out", Count(PlacementChangeKind.NowLeftOut)), ("no longer left out", Count(PlacementChangeKind.NowRanked)),
            ("new", Count(PlacementChangeKind.New)), ("gone", Count(PlacementChangeKind.Gone)), ("moved inside their tier", Count(PlacementChangeKind.SameTier)),
        };
        return string.Join(", ", counts.Where(one => one.Count > 0).Select(one => $"{NumberText.Count(one.Count)} {one.Words}"));

        int Count(PlacementChangeKind kind) => changes.Count(change => change.Kind == kind);
    }

    // Only where there is something to tell apart.
    private void PrintBlocks(TargetComparison target)
    {
        foreach (var one in target.Blocks.Where(one => target.Blocks.Length > 1 && (Rounding.Printed(one.Share, 1) > 0 || one.TauB is null or < 1)))
        {
            block.Labelled($"  {CompareWords.Block(one.Block)}", $"{NumberText.Points(one.Share)} points a movement; with this alone changed, order {CompareWords.Figure(one.TauB)}", Gutter);
        }
    }

    // What is left out names its rule already.
    private void PrintParts(PlacementChange change)
    {
        var isMove = change.Kind is PlacementChangeKind.OtherTier;
        foreach (var part in change.Parts.Where(part => isMove && CompareWords.Part(part) is not null))
        {
            var lines = string.Join("; ", part.Lines.Take(MostLines).Select(CompareWords.Change));
            var more = part.Lines.Length > MostLines ? $" and {NumberText.Count(part.Lines.Length - MostLines)} more" : "";
            block.Labelled("", $"{CompareWords.Block(part.Block)}, {CompareWords.Part(part)}{(lines.Length == 0 ? "" : $": {lines}{more}")}", 6);
        }
    }

    private void PrintSameTier(TargetComparison target)
    {
        var inside = target.Changes.Where(change => change.Kind == PlacementChangeKind.SameTier)
            .Select(change => $"{change.Movement} {NumberText.Count(change.Old!.Rank)} to {NumberText.Count(change.New!.Rank)} ({NumberText.Signed(change.Old.Gap)} to {NumberText.Signed(change.New.Gap)})").ToList();
        if (inside.Count > 0)
        {
            block.Labelled("  -", $"in the same tier, rank and gap: {string.Join(", ", inside)}", 4);
        }
    }

    private void PrintSame(IReadOnlyList<TargetComparison> targets)
    {
        var same = targets.Where(target => target.Changes.IsEmpty).Select(target => target.New.Target.Name).ToList();
        block.Blank();
        block.Wrapped(comparison.IsEmpty ? "Nothing differs: every list and every caution is the same." : same.Count == 0 ? "Every list differs." : $"The same in both: {string.Join(", ", same)}.");
    }
}
