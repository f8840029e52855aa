namespace ScoreRules.Language.Binding;

/// <summary><c>place</c>: a personal judgement about one movement.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Kind">The kind of judgement.</param>
/// <param name="Movement">The movement.</param>
/// <param name="Other">The movement it is placed by; null for a shift by a tier.</param>
public sealed record PlaceDefinition(StatementInfo Info, PlaceKind Kind, string Movement, string? Other) : BoundStatement(Info)
{
    /// <summary>By how many tiers it shifts: 1 is one lower, -1 one higher, 0 none.</summary>
    public int Shift => Kind switch { PlaceKind.OneTierHigher => -1, PlaceKind.OneTierLower => 1, _ => 0 };
}
