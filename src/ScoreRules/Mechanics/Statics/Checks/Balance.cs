using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;
using static ScoreRules.Mechanics.Statics.Checks.Objections;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>Whether body and load stand over the foot.</summary>
internal static class Balance
{
    /// <summary>Where the common centre of body and load lies ahead of the ankle on a flat foot, m.</summary>
    public static double AheadOfAnkle(Setup setup, in JointAngles angles)
    {
        var body = setup.Body;
        var pose = FootReaction.PoseOnFlatFoot(body, angles);
        var upper = BodyLumps.UpperBody(body);
        var load = setup.LoadNewtons * setup.Mechanism.SharedBy / BodyConstants.Gravity;
        var total = body.Person.MassKilograms + load;
        var moment = (upper.Kilograms * upper.Metres * pose.Trunk.Y.X)
            + (2 * body.Thigh.Kilograms * pose.ThighCentre.X)
            + (2 * body.Shank.Kilograms * pose.ShankCentre.X)
            + (2 * body.Foot.Kilograms * pose.FootCentre.X)
            + (load * (setup.Mechanism.LoadPoint == LoadPoint.Pelvis ? 0 : body.TrunkMetres * pose.Trunk.Y.X));
        return (moment / total) - pose.Ankle.X;
    }

    public static IEnumerable<MechanicsFinding> Check(Setup setup)
    {
        if (setup.Mechanism is not { Method: MomentMethod.FootReaction, IsHeldUpright: false })
        {
            yield break;
        }

        var foot = setup.Body.Foot.Metres;
        var (heel, toe) = (-BodyConstants.HeelToAnkle * foot, (1 - BodyConstants.HeelToAnkle) * foot);
        foreach (var (name, angles) in new[] { ("start", setup.Start), ("end", setup.End) })
        {
            var ahead = AheadOfAnkle(setup, angles);
            if (ahead < heel || ahead > toe)
            {
                yield return Warn(
                    FindingKind.Balance,
                    $"At the {name} the body would fall {(ahead < heel ? "backward" : "forward")}: its weight lies {Number(Math.Abs(ahead))} m {(ahead < 0 ? "behind" : "ahead of")} the ankle, off the foot.",
                    ahead < heel ? "State more ankle dorsiflexion or hip flexion, or less knee flexion." : "State less hip flexion or ankle dorsiflexion.");
            }
        }
    }
}
