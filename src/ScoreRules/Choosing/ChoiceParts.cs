using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Choosing;

/// <summary>
/// What a choice is to serve. All targets count the same. Of a target, half is its muscles by their shares, a quarter their lengths (long
/// and short alike), a quarter its movement patterns alike. Where no pattern is recorded, or no length, that quarter goes to the muscles.
/// The division is a convention of this program, no source: what is trained at all counts as much as how.
/// </summary>
internal sealed class ChoiceParts(Judgement judgement)
{
    private const double LengthShare = 0.25;
    private const double PatternShare = 0.25;

    private readonly LoadedEnds ends = new(judgement);
    private readonly AttributeDefinition? primeMover = Find(judgement, WellKnownAttributes.PrimeMover);
    private readonly AttributeDefinition? pattern = Find(judgement, WellKnownAttributes.MovementPattern);

    /// <summary>The parts of targets. They come from the whole ranking, so that a profile does not change what is wanted.</summary>
    public ImmutableArray<ChoicePart> Of(IReadOnlyCollection<TargetRanking> rankings) => [.. rankings.SelectMany(ranking => Of(ranking, 1.0 / rankings.Count))];

    /// <summary>Whether a placement serves a part.</summary>
    public bool Serves(Placement placement, ChoicePart part)
    {
        if (placement.Row.Target.Index != part.Target.Index)
        {
            return false;
        }

        return part.Kind switch
        {
            ChoicePartKind.Pattern => Pattern(placement.Row.Movement) is { } own && NameText.Same(own, part.Name),
            ChoicePartKind.Muscle => Moves(placement.Row.Movement, part.Name),
            ChoicePartKind.Long => Moves(placement.Row.Movement, part.Name) && ends.Of(placement.Row, part.Name).Long,
            _ => Moves(placement.Row.Movement, part.Name) && ends.Of(placement.Row, part.Name).Short,
        };
    }

    /// <summary>Whether a muscle is a prime mover of a movement; in a house that records none, every muscle of its targets is.</summary>
    public bool Moves(Movement movement, string muscle) =>
        primeMover is null ? movement.Trains.Any(target => target.Muscles.Any(part => NameText.Same(part.Muscle, muscle))) : movement.Facts[primeMover.Index].Value.Codes.Contains(primeMover.CodeOf(muscle));

    private IEnumerable<ChoicePart> Of(TargetRanking ranking, double share)
    {
        var target = ranking.Target;
        var patterns = ranking.Placements.Select(placement => Pattern(placement.Row.Movement)).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        var lengths = ends.AreKnown ? LengthShare : 0;
        var actions = patterns.Count > 0 ? PatternShare : 0;
        foreach (var (muscle, part) in target.Muscles)
        {
            yield return new ChoicePart(target, ChoicePartKind.Muscle, muscle, share * part * (1 - lengths - actions));
            if (lengths > 0)
            {
                yield return new ChoicePart(target, ChoicePartKind.Long, muscle, share * part * lengths / 2);
                yield return new ChoicePart(target, ChoicePartKind.Short, muscle, share * part * lengths / 2);
            }
        }

        foreach (var name in patterns)
        {
            yield return new ChoicePart(target, ChoicePartKind.Pattern, name, share * actions / patterns.Count);
        }
    }

    private string? Pattern(Movement movement) =>
        pattern is { IsWord: true } && movement.Facts[pattern.Index].Value is { IsKnown: true, Codes: [var code, ..] } ? pattern.Values[code] : null;

    private static AttributeDefinition? Find(Judgement judgement, string name) => judgement.Ruleset.Attributes.FirstOrDefault(attribute => NameText.Same(attribute.Name, name));
}
