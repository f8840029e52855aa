using ScoreRules.Mechanics.Muscles;

namespace ScoreRules.Tests.Mechanics.Facts;

/// <summary>Targets with the shares of the Longreach house (invented), which the second opinion used too.</summary>
internal static class Targets
{
    public static MuscleTarget ElbowExtensors { get; } = Of(("triceps long head", 38), ("triceps lateral head", 37), ("triceps medial head", 25));

    public static MuscleTarget Hamstrings { get; } = Of(("semimembranosus", 33), ("semitendinosus", 25), ("biceps femoris long head", 28), ("biceps femoris short head", 14));

    public static MuscleTarget Calves { get; } = Of(("gastrocnemius medial head", 29), ("gastrocnemius lateral head", 14), ("soleus", 57));

    public static MuscleTarget Soleus { get; } = Of(("soleus", 57));

    public static MuscleTarget ElbowFlexors { get; } = Of(("biceps brachii long head", 20), ("biceps brachii short head", 20), ("brachialis", 41), ("brachioradialis", 19));

    public static MuscleTarget Of(params (string Name, double Share)[] shares) => MuscleTarget.Of(shares.Select(share => KeyValuePair.Create(share.Name, share.Share)));

    /// <summary>The target of a row of the second opinion.</summary>
    public static MuscleTarget Of(string group, string scope, string movement) => group switch
    {
        "elbow_extensors" => ElbowExtensors,
        "hamstrings" => Hamstrings,
        _ => scope == "primary" && IsForSoleus(movement) ? Soleus : Calves,
    };

    private static bool IsForSoleus(string movement) => movement is "seated-calf-raise" or "bent-knee-single-leg-calf-raise";
}
