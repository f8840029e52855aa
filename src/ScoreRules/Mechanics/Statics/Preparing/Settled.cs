using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Checks;
using ScoreRules.Mechanics.Statics.Methods;

namespace ScoreRules.Mechanics.Statics.Preparing;

/// <summary>A mechanism with every number settled, for those who need forces but no curve.</summary>
internal static class Settled
{
    /// <summary>The setup, or null when an input is missing or refused.</summary>
    public static Setup? Of(Mechanism mechanism)
    {
        var ledger = new Ledger();
        mechanism = StandingPosture.Complete(mechanism, ledger);
        ledger.Object(InputChecks.Of(mechanism));
        if (ledger.IsStopped)
        {
            return null;
        }

        var setup = LoadSettling.Settle(Blank(mechanism), ledger);
        return ledger.IsStopped ? null : setup;
    }

    /// <summary>Angles, segments and sense of a checked mechanism; forces follow.</summary>
    public static Setup Blank(Mechanism mechanism)
    {
        var direction = Math.Sign(mechanism.End[mechanism.WorkingJoint] - mechanism.Start[mechanism.WorkingJoint]);
        return new Setup(mechanism, new BodyDimensions(mechanism.Person), JointAngles.Of(mechanism.Start), JointAngles.Of(mechanism.End), direction);
    }
}
