using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>Cautions added, lost, or shown beside other movements. A caution is known by its message.</summary>
internal static class CautionChanges
{
    /// <summary>All changes; losses first, then by message.</summary>
    public static ImmutableArray<CautionChange> Between(Judgement old, Judgement now)
    {
        var common = Names(old).Intersect(Names(now), StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
        var (before, after) = (ByText(old), ByText(now));
        return
        [
            .. before.Select(cautions => cautions.Key).Union(after.Select(cautions => cautions.Key), StringComparer.Ordinal)
                .Select(text => Change(text, Side(old, before[text], common), Side(now, after[text], common))).OfType<CautionChange>()
                .OrderByDescending(change => change.IsLoss).ThenBy(change => change.Text, StringComparer.Ordinal),
        ];
    }

    private static CautionChange? Change(string text, (CautionDefinition? Caution, HashSet<string> Beside) old, (CautionDefinition? Caution, HashSet<string> Beside) now)
    {
        ImmutableArray<string> noLonger = now.Caution is null ? [] : [.. old.Beside.Except(now.Beside, StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        ImmutableArray<string> newly = old.Caution is null ? [] : [.. now.Beside.Except(old.Beside, StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        var isSame = old.Caution is { } before && now.Caution is { } after && before.Severity == after.Severity && before.Place == after.Place && noLonger.IsEmpty && newly.IsEmpty;
        return isSame ? null : new CautionChange(text, old.Caution, now.Caution, noLonger, newly);
    }

    // Of several statements with one message the most serious stands for all; they are shown wherever one of them is.
    private static (CautionDefinition? Caution, HashSet<string> Beside) Side(Judgement judgement, IEnumerable<CautionDefinition> cautions, HashSet<string> common)
    {
        var all = cautions.ToList();
        var rows = judgement.Inferred!.Facts.Rows;
        var beside = all.Select(judgement.Inferred.Outcome).SelectMany(outcome => outcome.Effective.Or(outcome.CouldNotTell))
            .Select(row => rows[row].Movement.Name).Where(name => common.Contains(NameText.Key(name)));
        return (all.MaxBy(caution => caution.Severity), beside.ToHashSet(StringComparer.Ordinal));
    }

    private static ILookup<string, CautionDefinition> ByText(Judgement judgement) => judgement.Ruleset.Cautions.ToLookup(caution => caution.Text, StringComparer.Ordinal);

    private static IEnumerable<string> Names(Judgement judgement) => judgement.Inferred!.Facts.Rows.Select(row => NameText.Key(row.Movement.Name)).Distinct(StringComparer.Ordinal);
}
