using System.Collections.Immutable;
using ScoreRules.Comparing;

namespace ScoreRules.Publishing.Editions;

/// <summary>Cautions that were lost, added, or are shown elsewhere now: they stand first.</summary>
internal static class CautionLines
{
    private const int MostNames = 8;

    /// <summary>Prints them; one line says so when there are none.</summary>
    public static void Print(ImmutableArray<CautionChange> changes, TextBlock block)
    {
        block.Blank();
        if (changes.IsEmpty)
        {
            block.Wrapped("Cautions: the same, beside the same movements.");
            return;
        }

        block.Line("Cautions");
        foreach (var change in changes)
        {
            block.Labelled($"  {Word(change)}", $"{change.Text} ({change.New?.Info.Location ?? change.Old!.Info.Location}){Elsewhere(change)}");
        }
    }

    /// <summary>What happened to a caution, in a word.</summary>
    public static string Word(CautionChange change) => (change.Old, change.New) switch
    {
        (_, null) => "lost",
        (null, _) => "added",
        _ => change.IsLoss ? "weaker" : "wider",
    };

    private static string Elsewhere(CautionChange change)
    {
        var weaker = change is { Old: { } old, New: { } now } && now.Severity != old.Severity ? $" It was {old.Severity.ToString().ToLowerInvariant()} and is {now.Severity.ToString().ToLowerInvariant()} now." : "";
        return weaker + Names(" No longer beside ", change.NoLonger) + Names(" Now also beside ", change.Newly);
    }

    private static string Names(string before, ImmutableArray<string> names) => names.IsEmpty ? ""
        : $"{before}{string.Join(", ", names.Take(MostNames))}{(names.Length > MostNames ? $" and {NumberText.Count(names.Length - MostNames)} more" : "")}.";
}
