using System.Collections.Immutable;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Takes out of a house what is not in force on the day it is judged for. It is listed, and its names stay known.</summary>
internal static class InForce
{
    /// <summary>The house as it is on a day.</summary>
    public static BoundRuleset On(BoundRuleset all, DateOnly? day)
    {
        var absent = all.Movements.Where(movement => !movement.Info.IsInForce(day)).ToList();
        var lists = new Lists(day);
        var kept = all with
        {
            Date = day,
            Words = lists.Of(all.Words),
            Criteria = lists.Of(all.Criteria),
            Weights = lists.Of(all.Weights),
            Calls = lists.Of(all.Calls),
            Awards = lists.Of(all.Awards),
            CancelOuts = lists.Of(all.CancelOuts),
            Limits = lists.Of(all.Limits),
            Exclusions = [.. lists.Of(all.Exclusions), .. absent.Select(movement => Absence(movement, day))],
            Cautions = lists.Of(all.Cautions),
            Refusals = lists.Of(all.Refusals),
            Places = lists.Of(all.Places),
            Studies = lists.Of(all.Studies),
            Expectations = lists.Of(all.Expectations),
            Profiles = lists.Of(all.Profiles),
            Choices = lists.Of(all.Choices),
        };
        return kept with { NotInForce = [.. all.NotInForce, .. lists.Without, .. absent.Select(movement => movement.Info)] };
    }

    // A movement that is not there yet, or no longer, stays listed with the reason.
    private static ExclusionDefinition Absence(MovementDeclaration movement, DateOnly? day)
    {
        var when = movement.Info.From is { } from && day < from ? $"not there before {Absences.Written(from)}" : $"no longer there since {Absences.Written(movement.Info.Until!.Value)}";
        return new ExclusionDefinition(movement.Info with { Because = when }, new Everything(movement.Info.Location), [movement.Name]);
    }

    private sealed class Lists(DateOnly? day)
    {
        public List<StatementInfo> Without { get; } = [];

        public ImmutableArray<T> Of<T>(ImmutableArray<T> statements)
            where T : BoundStatement
        {
            Without.AddRange(statements.Where(statement => !statement.Info.IsInForce(day)).Select(statement => statement.Info));
            return [.. statements.Where(statement => statement.Info.IsInForce(day))];
        }
    }
}
