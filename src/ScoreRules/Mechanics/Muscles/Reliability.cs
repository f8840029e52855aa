namespace ScoreRules.Mechanics.Muscles;

/// <summary>How far the length and the moment arms of a muscle can be relied on, best first. The data call these A, B and C.</summary>
public enum Reliability
{
    /// <summary>A: two independent models, or a model and a measurement, agree within about 5 to 10 %.</summary>
    Agreed,

    /// <summary>B: direction and size are plausible; one model, or two within about 30 %.</summary>
    Plausible,

    /// <summary>C: only the sign is of use: longer or shorter, this way or that.</summary>
    SignOnly,
}
