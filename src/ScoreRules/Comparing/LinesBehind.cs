using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Comparing;

/// <summary>Finds, of the changes in a block, those that reach a placement or the benchmark it is measured against.</summary>
internal sealed class LinesBehind(Judgement old, Judgement now, ImmutableArray<RuleChange> changes)
{
    private readonly ILookup<RuleBlock, RuleChange> byBlock = changes.ToLookup(change => change.Block);

    /// <summary>The changes of a block that reach a placement.</summary>
    /// <param name="block">The block.</param>
    /// <param name="before">The placement's row in the old house.</param>
    /// <param name="oldList">Its list in the old house.</param>
    /// <param name="after">Its row in the new house.</param>
    /// <param name="newList">Its list in the new house.</param>
    public ImmutableArray<RuleChange> Of(RuleBlock block, PlacementRow before, TargetRanking oldList, PlacementRow after, TargetRanking newList)
    {
        int[] oldRows = [before.Index, oldList.Benchmark?.Index ?? before.Index];
        int[] newRows = [after.Index, newList.Benchmark?.Index ?? after.Index];
        var movements = new[] { before.Movement, after.Movement, oldList.Benchmark?.Movement, newList.Benchmark?.Movement }.OfType<Movement>().Select(movement => NameText.Key(movement.Name)).ToHashSet(StringComparer.Ordinal);
        var reaching = byBlock[block].Where(change => block switch
        {
            RuleBlock.Movements => movements.Contains(change.Movement!),
            RuleBlock.Targets => Is(change, NameText.Key(after.Target.Name)),
            RuleBlock.Judgements => movements.Contains(NameText.Key(((PlaceDefinition)(change.NewStatement ?? change.OldStatement)!).Movement)),
            RuleBlock.Awards or RuleBlock.Limits or RuleBlock.Exclusions => Acts(old, change.OldStatement, oldRows) || Acts(now, change.NewStatement, newRows),
            RuleBlock.CalledFacts => Differs(change, oldRows, newRows),
            RuleBlock.Evidence => Pulls(old, change.OldStatement, oldRows) || Pulls(now, change.NewStatement, newRows),
            _ => true,
        });
        return block is RuleBlock.Criteria or RuleBlock.Awards ? Weightiest(reaching, Lead(old, oldList, before), Lead(now, newList, after)) : [.. reaching];
    }

    // The change that moves the gap most stands first.
    private static ImmutableArray<RuleChange> Weightiest(IEnumerable<RuleChange> reaching, ILookup<string, double> before, ILookup<string, double> after) =>
        [.. reaching.OrderByDescending(change => Rounding.Compared(Math.Abs(after[Named(change)].Sum() - before[Named(change)].Sum())))];

    private static string Named(RuleChange change)
    {
        var info = (change.NewStatement ?? change.OldStatement)!.Info;
        return info.Name ?? info.Kind;
    }

    private static ILookup<string, double> Lead(Judgement judgement, TargetRanking list, PlacementRow row) =>
        judgement.Explainer!.Explain(list, row.Movement)!.Reasons.ToLookup(reason => reason.Name, reason => reason.Points, StringComparer.Ordinal);

    private static bool Is(RuleChange change, string target) => (change.NewStatement ?? change.OldStatement)?.Info.Name is { } name && NameText.Key(name) == target;

    private static bool Acts(Judgement judgement, BoundStatement? statement, int[] rows) =>
        statement is not null && rows.Any(judgement.Inferred!.Outcome(statement).Effective.Contains);

    // How studies are weighed reaches every movement that a study moves.
    private static bool Pulls(Judgement judgement, BoundStatement? statement, int[] rows) => statement is not null && rows.Any(row =>
    {
        var evidence = judgement.Evidence!.Of(judgement.Inferred!.Facts.Rows[row]);
        return evidence.Pulls.Concat(evidence.Held).Any(pull => statement is not StudyDefinition study || pull.Claim.Study.Name == study.Name);
    });

    // A called fact that is answered otherwise than before; a recipe may reach everything.
    private bool Differs(RuleChange change, int[] oldRows, int[] newRows) =>
        (change.NewStatement ?? change.OldStatement) is not CallDefinition call
        || oldRows.Zip(newRows).Any(pair => old.Inferred!.Concept(call.Fact).VerdictOf(pair.First) != now.Inferred!.Concept(call.Fact).VerdictOf(pair.Second));
}
