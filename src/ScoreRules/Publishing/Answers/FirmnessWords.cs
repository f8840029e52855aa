using System.Collections.Immutable;
using ScoreRules.Answers.Firmness;
using ScoreRules.Answers.Order;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>How firmly one movement stands above another, in words.</summary>
internal static class FirmnessWords
{
    private const int MostTold = 3;

    /// <summary>The answer.</summary>
    public static AnswerPage Of(FirmnessAnswer answer) => new(
        answer,
        answer.Findings.IsEmpty ? [OrderWords.NeverTogether(new OrderAnswer(answer.Question, answer.First, answer.Second, []))] : [.. answer.Findings.Select(Section)],
        ["One weight moves, the others stay as written; weights are shares of their total, so all shares shift. The house was judged again a hair before and a hair beyond each weight told."]);

    private static AnswerSection Section(FirmnessFinding finding)
    {
        var order = finding.Order;
        if (order.Outcome == OrderOutcome.NoOrder)
        {
            return OrderWords.NoOrder(order);
        }

        var (upper, lower) = (order.Upper.Row.Movement.Name, order.Lower.Row.Movement.Name);
        var turned = order.Outcome == OrderOutcome.Below ? "It is the other way round: " : "";
        var by = order.IsByTier ? $"by its tier, with {NumberText.Points(-order.Ahead)} points less" : $"by {NumberText.Points(order.Ahead)} points";
        var stands = order.Outcome == OrderOutcome.Level ? $"{upper} and {lower} are level." : $"{turned}{upper} stands above {lower} {by}.";
        return new AnswerSection(order.First.Row.Target.Name, $"{stands} {Verdict(finding)}", [.. finding.Swaps.Take(MostTold).Select((swap, at) => Line(swap, at, finding)), .. Drawn(finding)]);
    }

    private static string Verdict(FirmnessFinding finding) => finding.Verdict switch
    {
        FirmnessVerdict.Impossible => "No weights can turn that round: it is at least as good on every criterion, or ahead by more than weights can make up for.",
        FirmnessVerdict.SeveralWeights => "No one weight was found that turns that round; several together may.",
        FirmnessVerdict.NotComparable => finding.Order.Outcome == OrderOutcome.Level ? "" : "They are not judged by the same criteria, so that no one weight can be named.",
        FirmnessVerdict.ByTier => "Limits or judgements decide that, not weights; ask why.",
        _ => "The smallest change of one weight that puts them level:",
    };

    private static AnswerLine Line(SwapFinding swap, int at, FirmnessFinding finding)
    {
        var name = swap.Criterion.Name;
        var (change, direction) = swap.Level > swap.Weight ? ("more than", "more") : ("less than", "less");
        var places = swap.ChangesPlaces ? "they change places" : "their points change places, their ranks do not: limits or judgements keep them";
        var share = Math.Abs(swap.Parts);
        return AnswerLine.Of(
            at == 0 ? "One weight" : "or",
            $"{name} at {change} {NumberText.Plain(Math.Round(swap.Level, 2))} parts instead of {NumberText.Plain(swap.Weight)}: {places}. If all weights made 100, that would be {NumberText.Points(share)} {direction}.",
            new FiguresPart { Movement = finding.Order.Upper.Row.Movement.Name, Other = finding.Order.Lower.Row.Movement.Name, WeightBefore = swap.Weight, Weight = swap.Level, Points = swap.Parts, Rule = JsonParts.Rule(swap.Criterion.Info) });
    }

    private static ImmutableArray<AnswerLine> Drawn(FirmnessFinding finding) => finding.Probability is not { } probability ? [] :
        [AnswerLine.Of("How often", $"{CertaintyText.Ahead(probability)}, all varied that the authors admit", new FiguresPart { Share = probability })];
}
