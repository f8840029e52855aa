using System.Collections.Immutable;

namespace ScoreRules.Mechanics.Bodies;

/// <summary>
/// The one set of body constants. Masses and centres of mass: de Leva 1996, J Biomech 29(9):1223-1230 (adjusted
/// Zatsiorsky-Seluyanov). Lengths and landmark heights: Drillis and Contini 1966, as given by Winter, Biomechanics and Motor
/// Control of Human Movement. Head-arms-trunk over the hips: Winter 2009 after Dempster 1955.
/// </summary>
public static class BodyConstants
{
    /// <summary>Standard gravity as the reference numbers use it, m/s2.</summary>
    public const double Gravity = 9.81;

    /// <summary>Height of the ankle joint, fraction of stature.</summary>
    public const double AnkleHeight = 0.039;

    /// <summary>Height of the knee joint, fraction of stature.</summary>
    public const double KneeHeight = 0.285;

    /// <summary>Height of the hip joint, fraction of stature.</summary>
    public const double HipHeight = 0.530;

    /// <summary>Height of the shoulder joint, fraction of stature.</summary>
    public const double ShoulderHeight = 0.818;

    /// <summary>Height of the centre of the foot over the sole, fraction of stature: about half the ankle height, no source.</summary>
    public const double FootCentreHeight = 0.020;

    /// <summary>Heel to below the ankle, fraction of foot length; from memory, no source.</summary>
    public const double HeelToAnkle = 0.25;

    /// <summary>Mass of head, arms and trunk above the hips, fraction of body mass (Winter 2009).</summary>
    public const double HeadArmsTrunkMass = 0.678;

    /// <summary>Centre of head, arms and trunk from the hip, fraction of hip to shoulder (Winter 2009).</summary>
    public const double HeadArmsTrunkCentre = 0.626;

    private static readonly ImmutableArray<SegmentFractions> Male =
    [
        new(0.0694, 0.5976, 0.130, 0.1168), new(0.4346, 0.4486, 0.288, 0.288), new(0.0271, 0.5772, 0.186, 0.186), new(0.0162, 0.4574, 0.146, 0.146),
        new(0.0061, 0.7900, 0.108, 0.0495), new(0.1416, 0.4095, 0.245, 0.245), new(0.0433, 0.4395, 0.246, 0.246), new(0.0137, 0.4415, 0.152, 0.152),
    ];

    // The length the female head centre refers to is not in the reference set; the male one stands in (the row's own source lists none).
    private static readonly ImmutableArray<SegmentFractions> Female =
    [
        new(0.0668, 0.5894, 0.130, 0.1168), new(0.4257, 0.4151, 0.288, 0.288), new(0.0255, 0.5754, 0.186, 0.186), new(0.0138, 0.4559, 0.146, 0.146),
        new(0.0056, 0.7474, 0.108, 0.0450), new(0.1478, 0.3612, 0.245, 0.245), new(0.0481, 0.4352, 0.246, 0.246), new(0.0129, 0.4014, 0.152, 0.152),
    ];

    /// <summary>The fractions of one segment.</summary>
    /// <param name="segment">Which.</param>
    /// <param name="sex">Whose.</param>
    public static SegmentFractions Of(Segment segment, Sex sex) => (sex == Sex.Female ? Female : Male)[(int)segment];
}
