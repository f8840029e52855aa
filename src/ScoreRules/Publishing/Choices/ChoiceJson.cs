using System.Collections.Immutable;
using System.Text.Json;
using ScoreRules.Choosing;
using ScoreRules.Publishing.Answers;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Choices;

/// <summary>Choices as JSON: the same content as the text form, numbers unrounded.</summary>
public static class ChoiceJson
{
    /// <summary>The choices given, each with the judgement it was made from.</summary>
    public static string Print(Judgement judgement, IEnumerable<(Judgement For, Choice Choice)> choices)
    {
        var document = new ChooseDocument(
            JudgementJson.SchemaVersion, JudgementJson.ToolVersion, Sentences.Education, JudgementJson.House(judgement), JudgementJson.Inputs(judgement),
            [.. choices.Select(pair => Part(pair.For, pair.Choice))]);
        return JsonSerializer.Serialize(document, JudgementJson.Context.ChooseDocument) + "\n";
    }

    private static Json.ChoicePart Part(Judgement seen, Choice choice)
    {
        var request = choice.Request;
        return new Json.ChoicePart(
            ChoiceWords.Asked(request), [.. request.Targets.Select(target => target.Name)], request.IsWeek, seen.Profile?.Name, request.Statement is { } asked ? JsonParts.Rule(asked.Info) : null,
            [.. AnswerCautions.Of(choice.Rows, seen.Explainer!).Select(caution => new AboutPart(JsonParts.Caution(caution.Shown), caution.Movements))],
            Words(choice.Problem.Limits), choice.Obstacle is null ? choice.Points : null,
            [.. choice.Chosen.Select(Chosen)], [.. choice.WithFewer.Select(Reached)], choice.OneByOne is { } byHand ? Reached(byHand) : null,
            [.. (choice.Obstacle?.Alone ?? []).Select(found => new InTheWayPart(ChoiceWords.Limit(found.Limit), found.Least, found.Limit.Unit))],
            Words(choice.Obstacle?.Together ?? []), Served(choice.LeftOut), Served(choice.ServedByNobody),
            [.. choice.MajorGroups.Select(pair => new MajorGroupPart(pair.Group.Name, [.. pair.TrainedBy.Select(movement => movement.Name)]))],
            [.. choice.Personal.SelectMany(personal => JsonParts.SetAside(personal)).Distinct()],
            [.. choice.NotTold.Select(pair => new SetAsidePart(pair.Movement.Name, "not recorded", pair.Attribute.Name))]);
    }

    private static ChosenPart Chosen(ChosenMovement chosen) =>
        new(chosen.Candidate.Movement.Name, chosen.Adds, Served(chosen.Serves), Words(chosen.NeededFor), [.. chosen.InItsPlace.Select(Reached)]);

    private static ReachedPart Reached(CandidateChoice choice) => new([.. choice.Candidates.Select(candidate => candidate.Movement.Name)], choice.Points, Words(choice.Broken));

    private static ImmutableArray<ServedPart> Served(IEnumerable<Choosing.ChoicePart> parts) => [.. parts.Select(part => new ServedPart(part.Target.Name, ChoiceWords.Part(part), part.Share))];

    private static ImmutableArray<string> Words(IEnumerable<ChoiceLimit> limits) => [.. limits.Select(ChoiceWords.Limit)];
}
