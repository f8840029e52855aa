using ScoreRules.Explanation;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>The step of evidence in a trail.</summary>
internal static class EvidenceTrail
{
    /// <summary>Its lines: points moved, empty for remarks, and words. Studies first, then orders kept, judgement, remarks.</summary>
    public static IEnumerable<(string Points, string Words)> Lines(PlacementExplanation explained, Judgement judgement)
    {
        if (explained.Evidence is not { } moved)
        {
            return [];
        }

        var pulls = moved.Pulls.Where(pull => pull.IsTested || Rounding.Printed(pull.Points, 1) != 0)
            .Select(pull => (NumberText.Signed(pull.Points), $"{EvidenceText.Pull(explained, pull)}. ({pull.Claim.Lines[0].Location})"));
        var held = moved.Held.Where(pull => Rounding.Printed(pull.Points, 1) != 0)
            .Select(pull => (NumberText.Signed(pull.Points), $"{EvidenceText.Held(explained, pull)}. ({pull.Claim.Lines[0].Location})"));
        var judged = moved.Place is { } place ? [(NumberText.Signed(moved.PlacePoints), $"{Sentences.PlacedBy(place)}")] : Enumerable.Empty<(string, string)>();
        return pulls.Concat(held).Concat(judged).Concat(Remarks(explained, judgement).Select(remark => ("", Sentences.Sentence(remark))));
    }

    private static IEnumerable<string> Remarks(PlacementExplanation explained, Judgement judgement)
    {
        var moved = explained.Evidence!;
        foreach (var conflict in Conflicts(explained, judgement))
        {
            yield return conflict;
        }

        if (EvidenceText.BenchmarkMoved(explained) is { } benchmark)
        {
            yield return benchmark;
        }

        var stirs = moved.Moved != 0 || (explained.BenchmarkMoved?.Moved ?? 0) != 0;
        if (stirs && EvidenceText.Without(explained) is { } without)
        {
            yield return without;
        }
    }

    private static IEnumerable<string> Conflicts(PlacementExplanation explained, Judgement judgement)
    {
        var target = judgement.Evidence!.Targets[explained.Row.Target.Index];
        var place = target.PlaceOf(explained.Row);
        return target.Claims.Zip(target.Conflicts).Where(pair => place is { } at && pair.First.Tests(at)).Select(pair => EvidenceText.Conflict(pair.First, pair.Second)).OfType<string>();
    }
}
