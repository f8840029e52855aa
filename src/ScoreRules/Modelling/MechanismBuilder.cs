using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Choosing;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Modelling;

/// <summary>From a movement of the catalogue and a target to what mechanics asks.</summary>
internal sealed class MechanismBuilder(BoundRuleset ruleset)
{
    private static readonly ImmutableArray<(string Word, LoadPoint Point)> LoadPoints =
    [
        ("one hand", LoadPoint.Hand), ("hands at chest", LoadPoint.HandsAtChest), ("upper arm", LoadPoint.UpperArm), ("shoulders", LoadPoint.Shoulders), ("trunk", LoadPoint.Trunk),
        ("pelvis", LoadPoint.Pelvis), ("thigh", LoadPoint.Thigh), ("shin", LoadPoint.Shin), ("foot", LoadPoint.Foot), ("body", LoadPoint.Body),
    ];

    private readonly Person person = ruleset.House?.Person is { } said ? new Person(said.Kilograms, said.Metres, said.IsFemale ? Sex.Female : Sex.Male) : Person.Default;

    /// <summary>The movement as mechanics sees it, or what is missing to see it.</summary>
    public MovementModel Build(Movement movement, TargetDefinition target)
    {
        var words = new MovementWords(ruleset, movement);
        var moving = movement.Geometry.OfType<GeometryLine.Angle>().Where(angle => angle.Moves).ToImmutableArray();
        var joint = WorkingJoint.Of(target, moving);
        var method = joint is null ? null : MethodChoice.Of(Traits(words, joint, moving));
        var resistance = Resistances.Of(movement, words);
        var point = LoadPoints.FirstOrDefault(pair => pair.Word == words.LoadPoint);
        var lacks = Lacks(target, moving, joint, method, resistance, point.Word).ToImmutableArray();
        return lacks.IsEmpty
            ? new MovementModel(movement, target, Whole(movement, words, moving, joint!, method!.Value, resistance!, point.Point), [])
            : new MovementModel(movement, target, null, lacks);
    }

    private static MovementTraits Traits(MovementWords words, WorkingJoint joint, ImmutableArray<GeometryLine.Angle> moving) =>
        new(words.Pattern, words.Resistance, words.LineOfPull, words.KineticChain, joint.Motion, [.. moving.Select(angle => Motions.Of(angle.Name))]) { BodyPosition = words.BodyPosition };

    private static IEnumerable<string> Lacks(TargetDefinition target, ImmutableArray<GeometryLine.Angle> moving, WorkingJoint? joint, MomentMethod? method, Resistance? resistance, string? point)
    {
        if (joint is null)
        {
            yield return moving.IsEmpty ? "a joint that moves" : $"a joint that moves and that the muscles of \"{target.Name}\" turn";
        }
        else if (method is null)
        {
            yield return "a movement pattern, kinetic chain and body position that a method of mechanics fits";
        }

        if (resistance is null)
        {
            yield return "resistance type and line of pull";
        }

        if (point is null)
        {
            yield return "load point";
        }
    }

    private Mechanism Whole(Movement movement, MovementWords words, ImmutableArray<GeometryLine.Angle> moving, WorkingJoint joint, MomentMethod method, Resistance resistance, LoadPoint point) => new()
    {
        Start = PostureOf(movement, angle => angle.Start),
        End = PostureOf(movement, angle => angle.End),
        Moving = [.. moving.Select(angle => Motions.Of(angle.Name))],
        WorkingJoint = joint.Motion,
        Target = joint.Side,
        Method = method,
        Resistance = resistance,
        LoadPoint = point,
        Person = person,
        SharedBy = words.IsBilateral ? 2 : 1,
        BodyShare = point == LoadPoint.Body && method is MomentMethod.OpenArm or MomentMethod.InLine ? words.BodyShare : null,
        FootLineMetres = movement.Geometry.OfType<GeometryLine.Place>().FirstOrDefault(place => place.Name == "foot line")?.Forward,
        FixedHandle = words.Handle == "fixed straight bar" ? new Vector3(0, 0, 1) : null,
        IsUpperArmSupported = words.IsSupportedAt("upper arm"),
        IsTrunkSupported = words.IsSupportedAt("chest") || words.IsSupportedAt("back"),
        // Rails carry what would tip over; so does the rear foot of a split stance.
        IsHeldUpright = words.Resistance == "guided weight" || words.Pattern == "lunge step",
    };

    private static Posture PostureOf(Movement movement, Func<GeometryLine.Angle, double> at) =>
        new(movement.Geometry.OfType<GeometryLine.Angle>().ToImmutableDictionary(angle => Motions.Of(angle.Name), at));
}
