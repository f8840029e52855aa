namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>Where a bridge is supported unless stated otherwise.</summary>
public static class BridgeSupport
{
    /// <summary>Line of the push along the foot from the ankle, m: through the heel, under the ankle.</summary>
    public const double HeelMetres = 0;

    /// <summary>Height of a ball's top over the shoulder joints of a body on the floor, m: a ball of 0.55 m less 0.10 m; common practice, no source.</summary>
    public const double BallMetres = 0.45;
}
