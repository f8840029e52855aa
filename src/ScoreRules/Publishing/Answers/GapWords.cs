using System.Collections.Immutable;
using Humanizer;
using ScoreRules.Answers.Gaps;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>Movements that the catalogue does not hold, in words.</summary>
internal static class GapWords
{
    /// <summary>The answer.</summary>
    public static AnswerPage Of(GapAnswer answer) => new(
        answer,
        answer.Lists.All(list => list.Best.IsEmpty) ? [new AnswerSection(null, "Nothing is missing that lies one fact away from what there is.", [])] : [.. answer.Lists.Where(list => !list.Best.IsEmpty).Select(Section)],
        [
            $"One fact was varied at a time: {FactText.Join(GapAnswer.Varied)}. Only words were tried that other movements of the same pattern have. All other facts, ratings too, are those of the movement it is like: a coach must say whether it can be done, and rate it anew.",
            "\"Give or take\" is how far the scores of movements at least half alike to it scatter.",
        ]);

    private static AnswerSection Section(GapList list) => new(
        list.Target.Name,
        $"{"movement".ToQuantity(list.Best.Length + list.More)} could be tried; {(list.More == 0 ? "all" : "the best of each kind")} here.",
        [.. list.Best.Select(Line), .. More(list)]);

    private static AnswerLine Line(GapFinding gap, int at)
    {
        var (change, placement) = (gap.Supposed.Changes[0], gap.Supposed.Placement!);
        var (to, from) = (FactText.Value(change.Attribute, change.To), FactText.Value(change.Attribute, change.From.Value));
        var spread = double.IsNaN(gap.Spread) ? "too few cousins to say how sure" : $"give or take {NumberText.Points(gap.Spread)} by {"cousin".ToQuantity(gap.Cousins)}";
        return AnswerLine.Of(at == 0 ? "Could be" : "", $"{gap.Like.Movement.Name}, but {change.Attribute.Name} {to} instead of {from}: {NumberText.Points(placement.Score)} points, {spread}; {placement.Tier.Name}", new FiguresPart
        {
            Other = gap.Like.Movement.Name,
            Points = placement.Score,
            Tier = placement.Tier.Name,
            Count = gap.Cousins,
            Changes = [new SupposedPart(change.Attribute.Name, from, to, change.GymCanChange)],
        });
    }

    private static ImmutableArray<AnswerLine> More(GapList list) => list.Refused == 0 ? [] :
        [AnswerLine.Of("Cannot be", $"{"other variation".ToQuantity(list.Refused)}, because the facts would contradict one another", new FiguresPart { Count = list.Refused })];
}
