namespace ScoreRules.Inference.Engine;

/// <summary>A derived fact that a rule waits for, or that it makes.</summary>
/// <param name="Kind">Its kind: a part, a called fact or worked-out numbers.</param>
/// <param name="Id">Which one of that kind.</param>
internal readonly record struct Antecedent(Type Kind, int Id)
{
    /// <summary>What one statement adds to a called fact.</summary>
    public static Antecedent Part(int call) => new(typeof(ConceptPart), call);

    /// <summary>A called fact.</summary>
    public static Antecedent Called(int concept) => new(typeof(Concept), concept);

    /// <summary>Worked-out numbers.</summary>
    public static Antecedent Numbers(int attribute) => new(typeof(WorkedOut), attribute);
}
