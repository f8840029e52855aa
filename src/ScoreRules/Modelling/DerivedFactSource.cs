using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;

namespace ScoreRules.Modelling;

/// <summary>
/// Facts of mechanics for the movements of a house, worked out when they are first asked for and then kept. Muscles that are good for
/// a sign only are left out; where they make up half a target or more, nothing is said about its lengths. Not for several threads at once.
/// </summary>
/// <param name="ruleset">The house.</param>
public sealed class DerivedFactSource(BoundRuleset ruleset)
{
    private const double LeastShare = 0.5;
    private const double LeastLength = 0.2;

    private readonly MechanismBuilder builder = new(ruleset);
    private readonly bool acceptsEvenLoad = ruleset.House is { AcceptsEvenLoad: true };
    private readonly Dictionary<(int Movement, int Target, bool WithIntervals), DerivedMovement> kept = [];

    /// <summary>How many movements and targets were worked out so far.</summary>
    public int Derivations => kept.Count;

    /// <summary>A fact of a row, as rules read it: parts and lengths in %.</summary>
    public CatalogueFact Of(PlacementRow row, AttributeDefinition attribute)
    {
        var found = Of(row.Movement, row.Target, withIntervals: false).Find(attribute.Name);
        return found?.Value is { } value
            ? new CatalogueFact(Language.Binding.FactValue.Of(value * ScaleOf(attribute)), found.IsAssumed ? FactOrigin.DerivedOnAssumption : FactOrigin.Derived, null, row.Movement.Location)
            : new CatalogueFact(Language.Binding.FactValue.Unknown, FactOrigin.Derived, null, null);
    }

    /// <summary>
    /// Whether a fact orders two movements: their intervals do not overlap, and lengths differ by at least a fifth of their range. Null
    /// where one of the two is not known.
    /// </summary>
    public bool? AreApart(PlacementRow first, PlacementRow second, string name)
    {
        var (one, other) = (Of(first.Movement, first.Target, withIntervals: true).Find(name), Of(second.Movement, second.Target, withIntervals: true).Find(name));
        if (one is not { Value: { } value, Interval: { } interval } || other is not { Value: { } otherValue, Interval: { } otherInterval })
        {
            return null;
        }

        var isLength = one.Fact.Basis is FactBasis.Lengths or FactBasis.ShapeAndLengths;
        return interval.IsApartFrom(otherInterval) && !(isLength && Math.Abs(value - otherValue) < LeastLength);
    }

    /// <summary>All facts of a movement for a target.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="target">The target.</param>
    /// <param name="withIntervals">Whether to find out how far each moves when one input is off.</param>
    public DerivedMovement Of(Movement movement, TargetDefinition target, bool withIntervals)
    {
        var key = (movement.Index, target.Index, withIntervals);
        if (!kept.TryGetValue(key, out var derived))
        {
            kept[key] = derived = Derive(movement, target, withIntervals);
        }

        return derived;
    }

    /// <summary>By how much a fact of mechanics is multiplied for rules: 100 for parts and lengths, which are told in %.</summary>
    public static double ScaleOf(AttributeDefinition attribute) => attribute.Unit == "%" ? 100 : 1;

    private DerivedMovement Derive(Movement movement, TargetDefinition target, bool withIntervals)
    {
        if (movement.Geometry.IsEmpty)
        {
            return new DerivedMovement(movement, target, null, ["a joint that moves"], 0);
        }

        var model = builder.Build(movement, target);
        if (model.Mechanism is not { } mechanism)
        {
            return new DerivedMovement(movement, target, null, model.Lacks, 0);
        }

        var reliable = target.Muscles.Where(muscle => MuscleModel.FindMuscle(muscle.Muscle) is { Reliability: not Reliability.SignOnly }).ToList();
        var covered = reliable.Sum(muscle => muscle.Share) / target.Muscles.Sum(muscle => muscle.Share);
        var muscles = covered > LeastShare ? reliable.Select(muscle => KeyValuePair.Create(muscle.Muscle, muscle.Share)) : [];
        var options = new FactOptions { WithIntervals = withIntervals, AcceptsEvenLoad = acceptsEvenLoad || movement.AcceptsEvenLoad, Support = new MovementWords(ruleset, movement).BodySupport };
        return new DerivedMovement(movement, target, MovementFacts.Of(mechanism, MuscleTarget.Of(muscles), options), [], covered > LeastShare ? covered : 0);
    }
}
