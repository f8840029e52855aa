using ScoreRules.Catalogue;

namespace ScoreRules.Publishing.Answers;

/// <summary>Said where a question meets nothing to be answered.</summary>
internal static class TargetWords
{
    /// <summary>A movement that none of the targets asked about ranks.</summary>
    public static AnswerSection NotRanked(Movement movement) =>
        new(null, $"{movement.Name} is not ranked there. It trains {FactText.Join(movement.Trains.Select(target => target.Name))}.", []);
}
