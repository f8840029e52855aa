using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Starting;

/// <summary>A target as a starter house declares it.</summary>
/// <param name="Name">The target.</param>
/// <param name="Benchmark">The first movement of the shared list that trains it.</param>
/// <param name="Muscles">The muscles that most of its movements move with.</param>
internal sealed record StarterTarget(string Name, string Benchmark, ImmutableArray<string> Muscles)
{
    private const double Often = 0.75;

    /// <summary>The statement.</summary>
    public string Text =>
        $"target {NameWriting.Written(Name)}\n  made of {string.Join(", ", Muscles.Select(muscle => $"{NameWriting.Written(muscle)} 1 part"))}\n  benchmark {NameWriting.Written(Benchmark)}\n";

    /// <summary>The target with its muscles counted from the movements: those that are prime mover nearly as often as the commonest.</summary>
    public StarterTarget Counted(MovementCatalogue movements, AttributeDefinition primeMover)
    {
        var counts = movements.Movements.Where(movement => movement.Trains.Any(target => target.Name == Name))
            .SelectMany(movement => movement.Facts[primeMover.Index].Value is { IsKnown: true } value ? value.Codes : [])
            .CountBy(code => code).ToList();
        var most = counts.Count == 0 ? 0 : counts.Max(count => count.Value);
        return most == 0 ? this : this with { Muscles = [.. counts.Where(count => count.Value >= Often * most).Select(count => count.Key).Order().Select(code => primeMover.Values[code])] };
    }
}
