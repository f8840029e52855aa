using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Modelling;

namespace ScoreRules.Choosing;

/// <summary>
/// At which end of its range of length a muscle meets its load. By mechanics where a movement states its geometry (moment-weighted length
/// in the upper or the lower half); else by where a coach expects the load to be hardest, an even load counting for both ends.
/// </summary>
internal sealed class LoadedEnds(Judgement judgement)
{
    private const string WeightedLength = "moment-weighted length";
    private const double Middle = 0.5;

    private readonly AttributeDefinition? peak = judgement.Ruleset.Attributes.FirstOrDefault(attribute => attribute.IsWord && NameText.Same(attribute.Name, WellKnownAttributes.PeakLoad));
    private readonly Dictionary<int, (string Muscle, double Length)[]> kept = [];

    /// <summary>Whether the house records anything of it.</summary>
    public bool AreKnown => peak is not null || judgement.Catalogue.Movements.Any(movement => !movement.Geometry.IsEmpty);

    /// <summary>The ends of one muscle in one movement; neither when it cannot be told.</summary>
    public (bool Long, bool Short) Of(PlacementRow row, string muscle)
    {
        foreach (var (name, length) in Derived(row))
        {
            if (NameText.Same(name, muscle))
            {
                return (length >= Middle, length < Middle);
            }
        }

        if (peak is null || row.Movement.Facts[peak.Index].Value is not { IsKnown: true } value)
        {
            return (false, false);
        }

        bool Is(string word) => peak.CodeOf(word) is >= 0 and var code && value.Codes.Contains(code);
        return (Is("lengthened") || Is("even"), Is("shortened") || Is("even"));
    }

    private (string Muscle, double Length)[] Derived(PlacementRow row)
    {
        if (!kept.TryGetValue(row.Index, out var lengths))
        {
            var facts = judgement.Derived?.Of(row.Movement, row.Target, withIntervals: false).Facts;
            kept[row.Index] = lengths = facts is null ? [] :
            [
                .. MuscleFacts.Of(facts, judgement.Ruleset.House is { AcceptsEvenLoad: true })
                    .Select(muscle => (muscle.Muscle, muscle.Values.FirstOrDefault(value => value.Fact.Name == WeightedLength)?.Value))
                    .Where(muscle => muscle.Value is not null).Select(muscle => (muscle.Muscle, muscle.Value!.Value)),
            ];
        }

        return lengths;
    }
}
