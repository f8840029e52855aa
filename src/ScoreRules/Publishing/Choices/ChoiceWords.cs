using Humanizer;
using ScoreRules.Choosing;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing.Choices;

/// <summary>The words for limits and parts of a choice.</summary>
internal static class ChoiceWords
{
    /// <summary>What is asked for: "3 for hamstrings".</summary>
    public static string Asked(ChoiceRequest request)
    {
        var who = request.IsWeek ? "a whole week" : FactText.Join([.. request.Targets.Select(target => target.Name)]);
        return request.Count is { } count ? $"{"movement".ToQuantity(count)} for {who}" : $"The fewest movements for {who}";
    }

    /// <summary>A limit as a demand.</summary>
    public static string Limit(ChoiceLimit limit) => limit.Kind switch
    {
        ChoiceLimitKind.Count => $"no more than {"movement".ToQuantity(((CountLimit)limit).Most)}",
        ChoiceLimitKind.Cover => $"one that is {limit.Name}",
        ChoiceLimitKind.Include => $"{NumberText.Plain(limit.Amount)} with {limit.Name}",
        ChoiceLimitKind.Total => $"total {limit.Name} at most {Amount(limit.Amount, limit.Unit)}",
        ChoiceLimitKind.Alike => $"no two more alike than {NumberText.Plain(limit.Amount)}%",
        ChoiceLimitKind.DifferOnlyBy => $"no two that differ only by {limit.Name}",
        ChoiceLimitKind.Target => $"one for {limit.Name}",
        _ => $"one for the {limit.Name}",
    };

    /// <summary>What a limit would have to be, where it is in the way.</summary>
    public static string InTheWay(LimitInTheWay found) => (found.Limit, found.Least) switch
    {
        (AtMostLimit sum, { } least) => $"{Limit(sum)}: with all else kept, the least is {Amount(least, sum.Unit)}",
        (CountLimit count, { } least) => $"{Limit(count)}: with all else kept, it takes {NumberText.Plain(least)}",
        (AtLeastLimit { Among.IsEmpty: true } none, _) => $"{Limit(none)}: none is left that could be chosen",
        var (limit, _) => Limit(limit),
    };

    /// <summary>A part of what is wanted.</summary>
    public static string Part(ChoicePart part) => part.Kind switch
    {
        ChoicePartKind.Muscle => part.Name,
        ChoicePartKind.Long => $"{part.Name} where it is long",
        ChoicePartKind.Short => $"{part.Name} where it is short",
        _ => part.Name,
    };

    /// <summary>A number with its unit; seconds from a minute and a half on in minutes.</summary>
    public static string Amount(double number, string? unit) => (number, unit) switch
    {
        ( >= 90, "s") => $"{NumberText.Plain(Tiering.Rounding.Printed(number / 60, 1))} min",
        (_, null) => NumberText.Plain(number),
        (_, "%" or "°") => $"{NumberText.Plain(number)}{unit}",
        _ => $"{NumberText.Plain(number)} {unit}",
    };

    /// <summary>Why a movement is not offered in a sum.</summary>
    public static string NotTold(AttributeDefinition attribute) => $"{attribute.Name} is not recorded, so it cannot be counted";
}
