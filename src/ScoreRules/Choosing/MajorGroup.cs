using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>
/// A major muscle group. The World Health Organization's guidelines on physical activity and sedentary behaviour (2020) recommend that
/// adults strengthen all major muscle groups on 2 or more days a week, and name the legs, back, abdomen, chest, shoulders and arms (the
/// wording from memory). Which muscle belongs where is common practice, no source; the gluteals count with the legs.
/// </summary>
/// <param name="Name">Its name.</param>
/// <param name="Muscles">Its muscles, by the names of the shared vocabulary.</param>
public sealed record MajorGroup(string Name, ImmutableArray<string> Muscles)
{
    /// <summary>On how many days a week at least.</summary>
    public const int DaysAWeek = 2;

    /// <summary>All groups.</summary>
    public static ImmutableArray<MajorGroup> All { get; } =
    [
        new("legs", [
            "rectus femoris", "vastus lateralis", "vastus medialis", "vastus intermedius", "semimembranosus", "semitendinosus", "biceps femoris long head", "biceps femoris short head",
            "gluteus maximus", "gluteus medius", "gluteus minimus", "adductor magnus", "gastrocnemius medial head", "gastrocnemius lateral head", "soleus",
        ]),
        new("back", ["latissimus dorsi", "teres major", "rhomboids", "trapezius descending", "trapezius transverse", "trapezius ascending", "erector spinae", "spinal erectors"]),
        new("abdomen", ["rectus abdominis", "external oblique", "internal oblique", "obliques", "transversus abdominis", "abdominals"]),
        new("chest", ["pectoralis major clavicular", "pectoralis major sternocostal"]),
        new("shoulders", ["deltoid anterior", "deltoid acromial", "deltoid posterior"]),
        new("arms", ["biceps brachii long head", "biceps brachii short head", "brachialis", "brachioradialis", "triceps long head", "triceps lateral head", "triceps medial head"]),
    ];
}
