using System.Collections.Immutable;
using ScoreRules.Answers.Audit;
using ScoreRules.Guarding;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Json;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Answers;

/// <summary>Placements that others contradict, in words.</summary>
internal static class AuditWords
{
    /// <summary>The answer.</summary>
    public static AnswerPage Of(AuditAnswer answer) => new(
        answer,
        [Whole(answer), .. answer.Findings.Where(HasAny).Select(Section)],
        ["Looked for: movements that are nowhere worse, on any criterion or award, and stand below; orders that a study tested and the list does not keep; scores further from what likeness suggests than twice the usual distance in their list; expectations that fail. A question to the authors, not a verdict."]);

    private static bool HasAny(AuditFinding finding) => !finding.Dominance.IsEmpty || !finding.Residuals.IsEmpty || !finding.Tested.IsEmpty;

    private static AnswerSection Whole(AuditAnswer answer)
    {
        var count = answer.Findings.Count(HasAny);
        var lead = count == 0 && answer.Failed.IsEmpty ? "Nothing contradicts its place." : $"{NumberText.Count(count)} of {NumberText.Count(answer.Findings.Length)} lists hold something to look at.";
        return new AnswerSection(null, lead, [.. answer.Failed.Select(Failed)]);
    }

    private static AnswerLine Failed(ExpectationResult result) =>
        AnswerLine.Of("Expectation", $"fails ({result.Expectation.Info.Location}): {result.Found}", new FiguresPart { Rule = JsonParts.Rule(result.Expectation.Info) });

    private static AnswerSection Section(AuditFinding finding)
    {
        var lead = finding switch
        {
            { Tested.IsEmpty: false } => "a movement stands below another that a study found worse.",
            { Dominance.IsEmpty: false } => "a movement stands below another that is nowhere better.",
            _ => "a score lies far from what its cousins suggest.",
        };
        var below = finding.Dominance.GroupBy(pair => pair.Better.Row.Index).SelectMany(Below);
        return new AnswerSection(finding.Target.Name, lead, [.. below, .. finding.Tested.Select(Tested), .. finding.Residuals.Select(Residual)]);
    }

    private static IEnumerable<AnswerLine> Below(IGrouping<int, DominanceFinding> pairs)
    {
        var (first, above) = (pairs.First(), pairs.Select(pair => pair.Above.Row.Movement.Name).ToImmutableArray());
        var name = first.Better.Row.Movement.Name;
        yield return AnswerLine.Of("Nowhere worse", $"{name} is at least as good as {FactText.Join(above)} on every criterion and award, and stands below. {Cause(first)}",
            new FiguresPart { Movement = name, Other = above[0], Count = above.Length, Tier = first.Better.Placement!.Tier.Name, TierBefore = first.Better.Placement.TierBeforeLimits.Name, Rule = first.Cause is { } cause ? JsonParts.Rule(cause.Info) : null });
    }

    private static AnswerLine Tested(TestedOrder tested)
    {
        var (better, above) = (tested.Better.Row.Movement.Name, tested.Above.Row.Movement.Name);
        return AnswerLine.Of("Tested", $"study \"{tested.Claim.Study.Name}\" found {better} better than {above}, and it stands below ({tested.Claim.Study.Info.Location}).",
            new FiguresPart { Movement = better, Other = above, Points = tested.Better.Score, PointsBefore = tested.Above.Score, Rule = JsonParts.Rule(tested.Claim.Study.Info) });
    }

    /// <summary>What put a movement below another that is nowhere better, as a sentence.</summary>
    public static string Cause(DominanceFinding pair) => pair switch
    {
        { Cause: PlaceDefinition place } => $"A personal judgement does that ({place.Info.Location}){Why(place)}",
        { Cause: { } limit } => $"{Capital(limit.Info.Title)} does that ({limit.Info.Location}){Why(limit)}",
        { IsByStudies: true } => "Studies do that.",
        _ => "No limit and no judgement does that.",
    };

    private static string Why(BoundStatement statement) => statement.Info.Because is { } because ? $": \"{Sentences.Sentence(because)}\"" : ".";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static AnswerLine Residual(ResidualFinding finding)
    {
        var name = finding.Placement.Row.Movement.Name;
        var size = NumberText.Points(Math.Abs(Rounding.Compared(finding.Residual)));
        return AnswerLine.Of("Far off", $"{name} has {NumberText.Points(finding.Placement.Score)} points, {size} {(finding.Residual > 0 ? "more" : "less")} than its cousins suggest (usual here: {NumberText.Points(finding.Spread)}). Most like it: {finding.Nearest.Row.Movement.Name}, {NumberText.Points(finding.Nearest.Score)} points, {NumberText.Whole(100 * finding.Likeness)} % alike.",
            new FiguresPart { Movement = name, Other = finding.Nearest.Row.Movement.Name, Points = finding.Placement.Score, PointsBefore = finding.Suggested, Share = finding.Likeness });
    }
}
