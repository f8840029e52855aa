using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Numbers with their doubt, made larger or smaller.</summary>
internal static class Scaling
{
    /// <summary>So many times the number; times must be above 0.</summary>
    public static UncertainNumber Of(UncertainNumber amount, double times) =>
        amount with { Number = amount.Number * times, Low = amount.Low * times, High = amount.High * times, Spread = amount.Spread * times };
}
