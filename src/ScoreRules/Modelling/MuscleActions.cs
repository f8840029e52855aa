using System.Collections.Frozen;
using System.Collections.Immutable;
using ScoreRules.Language.Text;
using ScoreRules.Mechanics.Bodies;
using static ScoreRules.Mechanics.Bodies.JointMotion;

namespace ScoreRules.Modelling;

/// <summary>
/// Which motions a muscle raises (1) or lowers (-1) when it shortens: its main actions as anatomy books commonly give them, from
/// memory. It decides only about which joint a target works; how well is a matter of moment arms.
/// </summary>
internal static class MuscleActions
{
    private static readonly FrozenDictionary<string, (JointMotion Motion, int Sense)[]> ByMuscle = new Dictionary<string, (JointMotion, int)[]>(StringComparer.Ordinal)
    {
        ["biceps brachii long head"] = [(ElbowFlexion, 1), (ForearmSupination, 1), (ShoulderFlexion, 1)],
        ["biceps brachii short head"] = [(ElbowFlexion, 1), (ForearmSupination, 1), (ShoulderFlexion, 1)],
        ["brachialis"] = [(ElbowFlexion, 1)],
        ["brachioradialis"] = [(ElbowFlexion, 1)],
        ["triceps long head"] = [(ElbowFlexion, -1), (ShoulderFlexion, -1)],
        ["triceps lateral head"] = [(ElbowFlexion, -1)],
        ["triceps medial head"] = [(ElbowFlexion, -1)],
        ["anconeus"] = [(ElbowFlexion, -1)],
        ["wrist flexors"] = [(WristExtension, -1)],
        ["wrist extensors"] = [(WristExtension, 1)],
        ["pectoralis major clavicular"] = [(ShoulderHorizontalAdduction, 1), (ShoulderFlexion, 1)],
        ["pectoralis major sternocostal"] = [(ShoulderHorizontalAdduction, 1), (ShoulderAbduction, -1), (ShoulderFlexion, 1)],
        ["latissimus dorsi"] = [(ShoulderFlexion, -1), (ShoulderAbduction, -1), (ShoulderHorizontalAdduction, -1)],
        ["teres major"] = [(ShoulderFlexion, -1), (ShoulderAbduction, -1), (ShoulderHorizontalAdduction, -1)],
        ["deltoid anterior"] = [(ShoulderFlexion, 1), (ShoulderHorizontalAdduction, 1)],
        ["deltoid acromial"] = [(ShoulderAbduction, 1)],
        ["deltoid posterior"] = [(ShoulderHorizontalAdduction, -1), (ShoulderFlexion, -1), (ShoulderExternalRotation, 1)],
        ["supraspinatus"] = [(ShoulderAbduction, 1)],
        ["infraspinatus"] = [(ShoulderExternalRotation, 1)],
        ["rectus femoris"] = [(KneeFlexion, -1), (HipFlexion, 1)],
        ["vastus lateralis"] = [(KneeFlexion, -1)],
        ["vastus medialis"] = [(KneeFlexion, -1)],
        ["vastus intermedius"] = [(KneeFlexion, -1)],
        ["semimembranosus"] = [(KneeFlexion, 1), (HipFlexion, -1)],
        ["semitendinosus"] = [(KneeFlexion, 1), (HipFlexion, -1)],
        ["biceps femoris long head"] = [(KneeFlexion, 1), (HipFlexion, -1)],
        ["biceps femoris short head"] = [(KneeFlexion, 1)],
        ["hamstrings biarticular"] = [(KneeFlexion, 1), (HipFlexion, -1)],
        ["gluteus maximus"] = [(HipFlexion, -1)],
        ["gluteus medius"] = [(HipAbduction, 1)],
        ["gluteus minimus"] = [(HipAbduction, 1)],
        ["adductor magnus"] = [(HipAbduction, -1), (HipFlexion, -1)],
        ["gracilis"] = [(HipAbduction, -1), (KneeFlexion, 1)],
        ["sartorius"] = [(HipFlexion, 1), (KneeFlexion, 1)],
        ["tensor fasciae latae"] = [(HipAbduction, 1), (HipFlexion, 1)],
        ["gastrocnemius medial head"] = [(AnkleDorsiflexion, -1), (KneeFlexion, 1)],
        ["gastrocnemius lateral head"] = [(AnkleDorsiflexion, -1), (KneeFlexion, 1)],
        ["soleus"] = [(AnkleDorsiflexion, -1)],
        ["tibialis posterior"] = [(AnkleDorsiflexion, -1)],
        ["fibularis longus"] = [(AnkleDorsiflexion, -1)],
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The names it knows.</summary>
    public static ImmutableArray<string> Muscles => ByMuscle.Keys;

    /// <summary>What a muscle does; nothing for one that is not listed or crosses none of the joints.</summary>
    public static (JointMotion Motion, int Sense)[] Of(string muscle) => ByMuscle.GetValueOrDefault(NameText.Key(muscle)) ?? [];
}
