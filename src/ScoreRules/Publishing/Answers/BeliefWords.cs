using System.Collections.Immutable;
using Humanizer;
using ScoreRules.Answers.Beliefs;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>What rests on one statement, in words.</summary>
internal static class BeliefWords
{
    private const int MostTold = 4;

    /// <summary>The answer.</summary>
    public static AnswerPage Of(BeliefAnswer answer)
    {
        var firm = answer.Findings.Count(finding => finding.Moves.IsEmpty && finding.Unscored.IsEmpty);
        return new AnswerPage(
            answer,
            [new AnswerSection(null, Lead(answer), [.. answer.Findings.Where(finding => !finding.Moves.IsEmpty || !finding.Unscored.IsEmpty).OrderByDescending(finding => finding.Moves.Length).SelectMany(finding => Lines(answer, finding)), .. NoMove(firm, answer)])],
            ["Each statement was taken out, one at a time, and the house judged again; weights then share what is left. Cautions, and what asks who somebody is, are never taken out."]);
    }

    private static string Lead(BeliefAnswer answer) => answer.Question.Kind switch
    {
        QuestionKind.WhereIsShaky => OfMovement(answer),
        QuestionKind.WhatRestsOn when answer.Findings.IsEmpty => $"Nothing can be said of \"{answer.Question.Statement}\": it is a caution, or protects somebody, or only explains.",
        QuestionKind.WhatRestsOn when answer.Fragile == 0 => $"No tier rests on \"{answer.Question.Statement}\" alone.",
        QuestionKind.WhatRestsOn => $"{Count(answer.Fragile)} of {Count(answer.Placements)} placements would stand in another tier without \"{answer.Question.Statement}\" ({Percent(answer)} %).",
        _ when answer.Fragile == 0 => $"No placement rests on one statement alone: {Count(answer.Placements)} placements, {"statement".ToQuantity(answer.Findings.Length)} taken out one at a time.",
        _ => $"{Count(answer.Fragile)} of {Count(answer.Placements)} placements ({Percent(answer)} %) rest on one statement that is not said to be sure, or on one criterion.",
    };

    private static string OfMovement(BeliefAnswer answer)
    {
        var name = answer.Question.Movements[0];
        var on = answer.Findings.Count(finding => !finding.Moves.IsEmpty);
        return answer.Placements == 0 ? $"{name} is not ranked there."
            : on == 0 ? $"The tier of {name} rests on no one statement: without any of {Count(answer.Findings.Length)} it stays."
            : $"The tier of {name} rests on {"statement".ToQuantity(on)}, each by itself.";
    }

    private static string Count(int count) => NumberText.Count(count);

    private static string Percent(BeliefAnswer answer) => NumberText.Whole(100.0 * answer.Fragile / answer.Placements);

    private static IEnumerable<AnswerLine> Lines(BeliefAnswer answer, BeliefFinding finding)
    {
        var info = finding.Statements[0].Info;
        var belief = Sentences.Credence(info.Credence) is { Length: > 0 } said ? said : "not said how sure";
        var unscored = finding.Unscored.IsEmpty ? "" : $"; {FactText.Join(finding.Unscored)} cannot be scored then";
        var alone = answer.Question.Kind == QuestionKind.WhereIsShaky && finding.Moves.Length == 1;
        var what = alone ? Move(finding.Moves[0]) : $"{"placement".ToQuantity(finding.Moves.Length)} in another tier";
        yield return AnswerLine.Of("Without", $"{info.Title} ({belief}, {info.Location}): {what}{unscored}",
            new FiguresPart { Count = finding.Moves.Length, TierBefore = alone ? finding.Moves[0].Before?.Name : null, Tier = alone ? finding.Moves[0].After?.Name : null, Share = answer.Placements == 0 ? null : (double)finding.Moves.Length / answer.Placements, Rule = JsonParts.Rule(info) });
        foreach (var move in finding.Moves.Take(alone ? 0 : MostTold))
        {
            yield return AnswerLine.Behind($"{move.Row.Movement.Name} for {move.Row.Target.Name}: {Move(move)}", 1,
                new FiguresPart { Movement = move.Row.Movement.Name, Target = move.Row.Target.Name, TierBefore = move.Before?.Name, Tier = move.After?.Name });
        }

        if (!alone && finding.Moves.Length > MostTold)
        {
            yield return AnswerLine.Behind($"and {Count(finding.Moves.Length - MostTold)} more", 1, new FiguresPart { Count = finding.Moves.Length - MostTold });
        }
    }

    private static string Move(TierMove move) => $"{Tier(move.Before)} becomes {Tier(move.After)}";

    private static string Tier(TierDefinition? tier) => tier?.Name ?? "left out";

    private static ImmutableArray<AnswerLine> NoMove(int firm, BeliefAnswer answer) => firm == 0 || answer.Findings.Length == firm ? [] :
        [AnswerLine.Of("No matter", $"{"statement".ToQuantity(firm)} could be taken out without moving {(answer.Question.Kind == QuestionKind.WhereIsShaky ? "it" : "any placement")} to another tier", new FiguresPart { Count = firm })];
}
