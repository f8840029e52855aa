using ScoreRules.Answers.Kit;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>Which kit to buy next, in words.</summary>
internal static class PurchaseWords
{
    private const int MostTold = 5;

    /// <summary>The answer.</summary>
    public static AnswerPage Of(PurchaseAnswer answer) => answer.Profile is null
        ? new AnswerPage(answer, [new AnswerSection(null, Whose(answer), [])], [])
        : new AnswerPage(answer, [Section(answer)],
            ["What counts is by how many points the first choice of each list rises, over all lists together; a list without any counts from 0. A sub-target is counted only where the question names it. Every piece, and every two pieces, were tried. Prices and space are not known here."]);

    private static string Whose(PurchaseAnswer answer) => answer.Profiles.IsEmpty
        ? "Which kit is there? Write a profile that lists it (\"profile NAME\" and \"kit ...\"), and ask again with --profile NAME."
        : $"Which kit is there? Ask again with --profile NAME, or \"using profile NAME\" below the question. Profiles with kit: {FactText.Join(answer.Profiles)}.";

    private static AnswerSection Section(PurchaseAnswer answer)
    {
        if (answer.Singles.IsEmpty && answer.Pair is null)
        {
            return new AnswerSection(null, $"Nothing that could be bought gives {answer.Profile!.Name} a better first choice.", []);
        }

        var lead = answer.Singles.IsEmpty
            ? "No single piece gives a better first choice, two together do."
            : $"For {answer.Profile!.Name}, the piece that adds most is {answer.Singles[0].Kit[0]}.";
        return new AnswerSection(null, lead, [.. answer.Singles.Take(MostTold).SelectMany(One), .. Second(answer), .. Pair(answer)]);
    }

    private static IEnumerable<AnswerLine> One(Purchase purchase, int at) => Lines(at == 0 ? "One piece" : "", purchase);

    private static IEnumerable<AnswerLine> Second(PurchaseAnswer answer) => answer.Second is { } second ? Lines("Then", second) : [];

    private static IEnumerable<AnswerLine> Pair(PurchaseAnswer answer)
    {
        if (answer.Pair is not { } pair || (!answer.Singles.IsEmpty && pair.Points <= answer.Singles[0].Points))
        {
            return [];
        }

        var same = answer.Second is { } second && second.Kit.Order(StringComparer.Ordinal).SequenceEqual(pair.Kit.Order(StringComparer.Ordinal), StringComparer.Ordinal);
        return same ? [AnswerLine.Of("Best two", $"the same two: {FactText.Join(pair.Kit)}", Figures(pair))] : Lines("Best two", pair);
    }

    private static IEnumerable<AnswerLine> Lines(string label, Purchase purchase)
    {
        yield return AnswerLine.Of(label, $"{FactText.Join(purchase.Kit)}: {NumberText.Points(purchase.Points)} points more in {NumberText.Count(purchase.Rises.Length)} {(purchase.Rises.Length == 1 ? "list" : "lists")}", Figures(purchase));
        foreach (var rise in purchase.Rises)
        {
            var from = rise.Before is { } before ? $"{NumberText.Points(before.Score)} ({before.Row.Movement.Name})" : "nothing";
            yield return AnswerLine.Behind($"{rise.Target.Name}: from {from} to {NumberText.Points(rise.After.Score)} ({rise.After.Row.Movement.Name})", 1, Figures(rise));
        }
    }

    private static FiguresPart Figures(Purchase purchase) => new() { Kit = purchase.Kit, Points = purchase.Points, Count = purchase.Rises.Length };

    private static FiguresPart Figures(PurchaseRise rise) => new()
    {
        Target = rise.Target.Name,
        Movement = rise.After.Row.Movement.Name,
        Other = rise.Before?.Row.Movement.Name,
        Points = rise.After.Score,
        PointsBefore = rise.Before?.Score,
        Tier = rise.After.Tier.Name,
        TierBefore = rise.Before?.Tier.Name,
    };
}
