namespace ScoreRules.Mechanics.Statics.Loads;

/// <summary>
/// Loads taken when none is stated. Common practice, no source: the shape of a curve depends on them only through the
/// body's own weight beside them, and each use is listed as assumed.
/// </summary>
public static class UsualLoads
{
    /// <summary>Tension of a cable, N.</summary>
    public const double CableNewtons = 100;

    /// <summary>Stiffness of a band, N/m.</summary>
    public const double BandNewtonsPerMetre = 100;

    /// <summary>Length at which a band begins to pull, fraction of its length in the start posture.</summary>
    public const double BandSlackOfStart = 0.77;

    /// <summary>A weight at a point of the body, kg.</summary>
    /// <param name="point">Where.</param>
    /// <param name="bodyKilograms">Body mass, kg.</param>
    public static double Kilograms(LoadPoint point, double bodyKilograms) => point switch
    {
        LoadPoint.Hand or LoadPoint.UpperArm or LoadPoint.Shin => 10,
        LoadPoint.Body => 0,
        _ => bodyKilograms,
    };
}
