using System.Collections.Immutable;
using ScoreRules.Answers.Order;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>Why one movement stands above another, in words.</summary>
internal static class OrderWords
{
    /// <summary>The answer.</summary>
    public static AnswerPage Of(OrderAnswer answer) => new(
        answer,
        answer.Findings.IsEmpty ? [NeverTogether(answer)] : [.. answer.Findings.Select(Section)],
        ["\"Enough\" is the smallest set of reasons that outweighs everything against. All reasons add up to the difference of the scores."]);

    /// <summary>Said of two movements that share no target.</summary>
    public static AnswerSection NeverTogether(OrderAnswer answer) => new(null, $"They are not ranked in one list: {Trains(answer.First)}, {Trains(answer.Second)}.", []);

    /// <summary>Why there is no order: what leaves a movement out.</summary>
    public static AnswerSection NoOrder(OrderFinding finding)
    {
        var lines = new[] { finding.First, finding.Second }.Where(explained => explained.LeftOut is not null).Select(LeftOutLine);
        return new AnswerSection(finding.First.Row.Target.Name, "There is no order, because what is left out is not ranked.", [.. lines]);
    }

    /// <summary>A movement that is left out, and by which rule.</summary>
    public static AnswerLine LeftOutLine(PlacementExplanation explained)
    {
        var rule = explained.LeftOut!.Rules[0];
        var why = rule.Info.Because is { } because ? $": \"{Sentences.Sentence(because)}\"" : ".";
        return AnswerLine.Of("Left out", $"{explained.Row.Movement.Name}, by {rule.Info.Title} ({rule.Info.Location}){why} It keeps its score, {NumberText.Points(explained.LeftOut.Score)}.",
            new FiguresPart { Movement = explained.Row.Movement.Name, Points = explained.LeftOut.Score, Rule = JsonParts.Rule(rule.Info) });
    }

    private static string Trains(Catalogue.Movement movement) => $"{movement.Name} trains {FactText.Join(movement.Trains.Select(target => target.Name))}";

    private static AnswerSection Section(OrderFinding finding) => finding.Outcome switch
    {
        OrderOutcome.NoOrder => NoOrder(finding),
        _ => new AnswerSection(finding.First.Row.Target.Name, Lead(finding), [.. Decisive(finding), .. Lines(finding)]),
    };

    private static string Lead(OrderFinding finding)
    {
        var (upper, lower) = (finding.Upper, finding.Lower);
        var (own, other) = (upper.Placement!, lower.Placement!);
        if (finding.Outcome == OrderOutcome.Level)
        {
            return $"They are level: both have {NumberText.Points(own.Score)} points and stand in {own.Tier.Name}.";
        }

        var turned = finding.Outcome == OrderOutcome.Below ? "It is the other way round: " : "";
        var tiers = own.Tier.Index == other.Tier.Index ? $"both in {own.Tier.Name}" : $"{own.Tier.Name} and {other.Tier.Name}";
        return $"{turned}{upper.Row.Movement.Name} stands above {lower.Row.Movement.Name}, {NumberText.Points(own.Score)} to {NumberText.Points(other.Score)} points ({tiers}).";
    }

    // Where tiers decide against the points, what moved either of them is the reason.
    private static IEnumerable<AnswerLine> Decisive(OrderFinding finding)
    {
        if (!finding.IsByTier)
        {
            yield break;
        }

        foreach (var explained in new[] { finding.Upper, finding.Lower }.Where(one => one.Placement is { Binding: not null } or { Judgement: not null }))
        {
            var placement = explained.Placement!;
            var words = placement.Judgement is null ? Sentences.Limits(placement) : Sentences.Judgement(placement)!;
            BoundStatement moved = placement.Judgement is null ? placement.Binding! : placement.Judgement;
            yield return AnswerLine.Of("Tier decides", $"{explained.Row.Movement.Name}: {words}", new FiguresPart { Movement = explained.Row.Movement.Name, Tier = placement.Tier.Name, TierBefore = placement.TierBeforeLimits.Name, Rule = JsonParts.Rule(moved.Info) });
        }
    }

    private static IEnumerable<AnswerLine> Lines(OrderFinding finding)
    {
        var (enough, more, against) = (finding.Enough.ToList(), finding.More.ToList(), finding.Against.ToList());
        return Block(enough.Count == 1 ? "Enough" : "Enough together", enough, finding)
            .Concat(Block(enough.Count == 0 ? "In favour" : "Also in favour", more, finding))
            .Concat(against.Count == 0 ? [AnswerLine.Of("Against", "nothing: it is at least as good on every criterion and award")] : Block("Against", against, finding));
    }

    private static IEnumerable<AnswerLine> Block(string label, List<OrderReason> reasons, OrderFinding finding)
    {
        for (var i = 0; i < reasons.Count; i++)
        {
            var reason = reasons[i];
            var statement = reason.Award?.Rule.Info ?? (reason.Upper ?? reason.Lower)?.Criterion.Info;
            var figures = new FiguresPart { Points = reason.Points, Rule = statement is null ? null : JsonParts.Rule(statement) };
            yield return AnswerLine.Of(i == 0 ? label : "", $"{reason.Name} {NumberText.Signed(reason.Points)}: {Why(reason, finding)}", figures);
            foreach (var line in reason.Award is { } award ? Chain(award) : [])
            {
                yield return line;
            }
        }
    }

    private static ImmutableArray<AnswerLine> Chain(RuleExplanation award)
    {
        var chain = ChainText.Of(award.Trace).ToImmutableArray();
        return chain.IsEmpty ? [AnswerLine.Behind(TraceText.Held(award.Trace))] : chain;
    }

    private static string Why(OrderReason reason, OrderFinding finding)
    {
        if (reason.Award is { } award)
        {
            var whose = (reason.IsOfUpper ? finding.Upper : finding.Lower).Row.Movement.Name;
            return $"only {whose} has this{(award.Rule.Info.Because is { } because ? $"; \"{Sentences.Sentence(because)}\"" : "")}";
        }

        if (reason.Upper is null && reason.Lower is null)
        {
            return reason.Name == OrderReasons.Studies ? "direct comparisons move their scores; scorerules explain says which" : "a personal judgement sets one of them by another movement";
        }

        return $"{Side(finding.Upper, reason.Upper)}; {Side(finding.Lower, reason.Lower)}";
    }

    private static string Side(PlacementExplanation explained, CriterionExplanation? part) =>
        part is null ? $"{explained.Row.Movement.Name} is not judged by it" : $"{explained.Row.Movement.Name} {FactText.Told(part.Attribute, part.Fact)}";
}
