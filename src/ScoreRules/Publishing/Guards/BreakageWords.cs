using ScoreRules.Guarding.Breaking;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing.Guards;

/// <summary>Breakages, what they did, and pins, in words.</summary>
internal static class BreakageWords
{
    /// <summary>What is broken: <c>criterion "stretch" halved</c>.</summary>
    public static string Title(Breakage breakage) => $"{breakage.Title} {Done(breakage)}";

    /// <summary>What a moved placement did: "hack squat in quadriceps, from Strong pick to left out".</summary>
    public static string Move(MovedRow moved) => $"{moved.Row.Movement.Name} in {moved.Row.Target.Name}, from {Tier(moved.Before)} to {Tier(moved.After)}";

    /// <summary>A pin as rule text.</summary>
    public static string Pin(Pin pin)
    {
        var where = pin.Tier is null ? "left out" : $"in {NameWriting.Written(pin.Tier.Name)}";
        return $"expect {NameWriting.Written(pin.Row.Movement.Name)} is {where} for {NameWriting.Written(pin.Row.Target.Name)}";
    }

    /// <summary>A share as a whole percentage, rounded down so that nothing is called whole that is not.</summary>
    public static string Percent(double share) => NumberText.Plain(Math.Floor(Tiering.Rounding.Compared(share * 100))) + " %";

    private static string Tier(TierDefinition? tier) => tier?.Name ?? "left out";

    private static string Done(Breakage breakage) => (breakage.Kind, breakage.Part) switch
    {
        (BreakageKind.Deleted, _) => "taken out",
        (BreakageKind.Halved, null) => "halved",
        (BreakageKind.Halved, { } part) => $"with \"{Words(part.Text)}\" halved",
        (BreakageKind.Doubled, null) => "doubled",
        (BreakageKind.Doubled, { } part) => $"with \"{Words(part.Text)}\" doubled",
        (BreakageKind.Reversed, _) => "turned round",
        (BreakageKind.MovedUp, null) => "moved up",
        (BreakageKind.MovedUp, { } part) => $"with a higher number in \"{Words(part.Text)}\"",
        (BreakageKind.MovedDown, null) => "moved down",
        (BreakageKind.MovedDown, { } part) => $"with a lower number in \"{Words(part.Text)}\"",
        (BreakageKind.PartDeleted, var part) => $"without \"{Words(part!.Text)}\"",
        (BreakageKind.PartReversed, var part) => $"with the opposite of \"{Words(part!.Text)}\"",
        (BreakageKind.OnlyForDeleted, _) => "without its \"only for\"",
        _ => "without its \"except for\"",
    };

    // A part may stand on several lines.
    private static string Words(string text) => string.Join(' ', text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries));
}
