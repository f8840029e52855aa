using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;

namespace ScoreRules.Mechanics.Statics.Preparing;

/// <summary>Makes the method of a mechanism, noting what it takes for granted.</summary>
internal static class MethodBuilding
{
    private const string FootLineGain = "Where the foot is pushed, measured along the foot from the ankle, would fix the levers.";

    public static IMomentMethod Build(Setup setup, Ledger ledger)
    {
        ledger.Assume(Assumptions(setup.Mechanism.Method));
        return setup.Mechanism.Method switch
        {
            MomentMethod.OpenLeg => new OpenLeg(setup),
            MomentMethod.InLine => new InLine(setup),
            MomentMethod.FootReaction => new FootReaction(setup, FootLine(setup, ledger, FootReaction.MidFootMetres)),
            MomentMethod.Sled => OnSled(setup, ledger),
            MomentMethod.TrunkOverHips => new TrunkOverHips(setup),
            MomentMethod.Bridge => OnBridge(setup, ledger),
            MomentMethod.BodyOverKnees => new BodyOverKnees(setup),
            MomentMethod.CalfLever => OnBall(setup, ledger),
            _ => new OpenArm(setup),
        };
    }

    private static double FootLine(Setup setup, Ledger ledger, double usual) =>
        ledger.Take("foot line", "m", setup.Mechanism.FootLineMetres, usual, FootLineGain);

    private static SledPush OnSled(Setup setup, Ledger ledger)
    {
        var footLine = FootLine(setup, ledger, FootReaction.MidFootMetres);
        var (first, last) = (Contact(setup, setup.Start, footLine), Contact(setup, setup.End, footLine));
        if (setup.Mechanism.Resistance is Resistance.Sled { SlopeDegrees: { } slope })
        {
            return new SledPush(setup, footLine, SledPush.TowardsHips(slope, -last));
        }

        ledger.Use("direction of the track, from the foot's own path", "°", Degrees.Atan2(last.Y - first.Y, last.X - first.X), InputOrigin.Derived);
        var path = (first - last).Unit();
        return new SledPush(setup, footLine, path.Dot(-last) < 0 ? -path : path);
    }

    private static Vector3 Contact(Setup setup, in JointAngles angles, double footLine) =>
        SledPush.Contact(setup.Body, LegPose.Of(setup.Body, angles), footLine);

    private static Bridge OnBridge(Setup setup, Ledger ledger)
    {
        var height = setup.Mechanism.FootSupportMetres;
        if (height is null && setup.Working == JointMotion.KneeFlexion)
        {
            height = ledger.Take("height of the foot support over the shoulders", "m", null, BridgeSupport.BallMetres, "The height of ball or slider would fix how steep the body lies.");
            ledger.Assume("The stated trunk pitch is not used: the height of the foot support decides how steep the body lies.");
        }

        return new Bridge(setup, FootLine(setup, ledger, BridgeSupport.HeelMetres), height);
    }

    private static CalfLever OnBall(Setup setup, Ledger ledger)
    {
        var ball = setup.Mechanism.BallOfFoot;
        const string Gain = "Two lengths of the foot would fix the lever of the calf.";
        var ahead = ledger.Take("ball of the foot ahead of the ankle", "m", ball?.Ahead, BallOfFoot.Default.Ahead, Gain);
        var below = ledger.Take("ball of the foot below the ankle", "m", ball?.Below, BallOfFoot.Default.Below, Gain);
        return new CalfLever(setup, new BallOfFoot(ahead, below), setup.Mechanism.Resistance is Resistance.Sled);
    }

    private static string Assumptions(MomentMethod method) => method switch
    {
        MomentMethod.OpenArm => "The load acts 0.06 m beyond the wrist; friction and speed are left out.",
        MomentMethod.OpenLeg => "A cuff acts at the ankle joint; friction and speed are left out.",
        MomentMethod.InLine => "The forearm is taken in line with the load; grip width and the turn of the upper arm would replace this.",
        MomentMethod.FootReaction => "The ground pushes straight up at mid-foot and the working leg stands flat; with a split stance this leg is taken to carry the stated share alone.",
        MomentMethod.Sled => "The platform pushes along the track only; a pad takes all that is across it.",
        MomentMethod.TrunkOverHips => "Head, arms and trunk are one mass; a weight in the hands hangs under the shoulders.",
        MomentMethod.Bridge => "Floor, bench and ball push straight up; the arms lie at shoulder level.",
        MomentMethod.BodyOverKnees => "The arms are held at shoulder level and the shanks are held still.",
        _ => "The whole force goes through the ball of the foot.",
    };
}
