using System.Collections.Immutable;
using ScoreRules.Answers.NewStudy;
using ScoreRules.Answers.Order;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>What a new study would change, in words.</summary>
internal static class NewStudyWords
{
    /// <summary>The answer.</summary>
    public static AnswerPage Of(NewStudyAnswer answer) => new(
        answer,
        !answer.CanWeigh ? [new AnswerSection(null, "This house does not say how it weighs studies, so none could change anything: it needs \"evidence\" with \"principles may be off by\" and \"a lone study adds\".", [])]
        : answer.Findings.IsEmpty ? [OrderWords.NeverTogether(new OrderAnswer(answer.Question, answer.First, answer.Second, []))]
        : [.. answer.Findings.Select(Section)],
        answer.CanWeigh ? [$"Supposed is one more study of the two, of what this house judges, weighed, give or take {NumberText.Plain(NewStudyAnswer.Doubt)} points beside what the house adds for a lone study. Results up to {NumberText.Plain(NewStudyAnswer.Furthest)} points from what the list says now were put in and judged."] : []);

    private static AnswerSection Section(NewStudyFinding finding)
    {
        var (first, second) = (finding.First.Row.Movement.Name, finding.Second.Row.Movement.Name);
        var now = $"now {first} has {NumberText.Points(finding.First.Score)} points ({finding.First.Tier.Name}) and {second} {NumberText.Points(finding.Second.Score)} ({finding.Second.Tier.Name}).";
        var lead = finding.Turns.IsEmpty ? $"{now} No result that was tried turns their order or a tier of theirs." : $"{now} It would turn something from these results on:";
        return new AnswerSection(finding.First.Row.Target.Name, lead, [.. finding.Turns.Select((turn, at) => Line(turn, at, first, second)), .. Level(finding)]);
    }

    private static AnswerLine Line(StudyTurn turn, int at, string first, string second)
    {
        var then = turn.Kind switch
        {
            StudyEffectKind.Order => turn.First.Rank < turn.Second.Rank ? $"{first} stands above {second}" : turn.First.Rank > turn.Second.Rank ? $"{second} stands above {first}" : "they are level",
            StudyEffectKind.FirstTier => $"{first} stands in {turn.First.Tier.Name}",
            _ => $"{second} stands in {turn.Second.Tier.Name}",
        };
        var points = $"{NumberText.Points(turn.First.Score)} to {NumberText.Points(turn.Second.Score)} points";
        return AnswerLine.Of(at == 0 ? "Result" : "", $"{Result(turn, first, second)}: then {then}, {points}.",
            new FiguresPart { Movement = first, Other = second, Points = turn.Difference, Tier = turn.Kind == StudyEffectKind.SecondTier ? turn.Second.Tier.Name : turn.First.Tier.Name });
    }

    private static string Result(StudyTurn turn, string first, string second)
    {
        var size = NumberText.Points(Math.Abs(turn.Difference));
        return (turn.Difference >= 0, turn.IsUpward) switch
        {
            (true, true) => $"{first} {size} points or more better",
            (true, false) => $"{first} better by {size} points or less",
            (false, true) => $"{second} better by {size} points or less",
            _ => $"{second} {size} points or more better",
        };
    }

    private static ImmutableArray<AnswerLine> Level(NewStudyFinding finding) => finding.IfLevel.IsEmpty
        ? [AnswerLine.Of("If level", "a study that finds the two level moves no movement to another tier")]
        : [.. finding.IfLevel.Select((move, at) => AnswerLine.Of(at == 0 ? "If level" : "", $"a study that finds the two level: {move.Row.Movement.Name}, {move.Before!.Name} becomes {move.After!.Name}",
            new FiguresPart { Movement = move.Row.Movement.Name, TierBefore = move.Before.Name, Tier = move.After.Name }))];
}
