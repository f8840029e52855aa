using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using ScoreRules.Mechanics.Statics.Preparing;
using static ScoreRules.Mechanics.Statics.Checks.Objections;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>Whether a pulley or anchor stands where a cable could run.</summary>
internal static class PulleyChecks
{
    /// <summary>Nearer than this the direction of the pull means nothing, m.</summary>
    public const double Touching = 0.02;

    public static IEnumerable<MechanicsFinding> Of(Setup setup)
    {
        var (word, place) = setup.Mechanism.Resistance switch
        {
            Resistance.Cable { Pulley: { } pulley } => ("pulley", pulley),
            Resistance.Band { Anchor: { } anchor } => ("anchor", anchor),
            _ => ("", Vector3.Zero),
        };
        return word.Length == 0 ? [] : Check(setup, word, place);
    }

    private static IEnumerable<MechanicsFinding> Check(Setup setup, string word, Vector3 place)
    {
        var joint = Places.FirstMovingJoint(setup);
        var reach = (Places.LoadPoint(setup, setup.Start) - joint).Length;
        if (place.Length < Touching)
        {
            yield return Refuse(FindingKind.Pulley, $"The {word} sits on the joint it is measured from.", $"State where the {word} is, in metres from the first moving joint.");
        }
        else if (Nearest(setup, joint + place) < Touching)
        {
            yield return Refuse(FindingKind.Pulley, $"The hand or foot runs into the {word}.", $"Move the {word} away from the path of the movement.");
        }
        else if (place.Length < reach)
        {
            yield return Warn(
                FindingKind.Pulley,
                $"The {word} is {Number(place.Length)} m from the joint, inside the reach of {Number(reach)} m.",
                $"Measure the {word} from the first moving joint in the start posture: forward, up, out.");
        }
    }

    private static double Nearest(Setup setup, Vector3 at)
    {
        var nearest = double.PositiveInfinity;
        for (var i = 0; i <= 12; i++)
        {
            nearest = Math.Min(nearest, (Places.LoadPoint(setup, JointAngles.Between(setup.Start, setup.End, i / 12.0)) - at).Length);
        }

        return nearest;
    }
}
