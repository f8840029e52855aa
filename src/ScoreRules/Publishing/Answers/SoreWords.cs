using ScoreRules.Answers.Order;
using ScoreRules.Answers.Sore;
using ScoreRules.Profiles;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>What a sore joint costs, in words: what is left is lower in that flag, never more than that.</summary>
internal static class SoreWords
{
    private const int MostReasons = 2;

    /// <summary>The answer.</summary>
    public static AnswerPage Of(SoreAnswer answer) => new(
        answer,
        [Whole(answer), .. answer.Findings.Where(finding => finding.First is not null && finding.After.SetAside.Length > 0).Select(finding => Section(answer, finding))],
        [$"This page cannot judge a sore {answer.Joint}. It sets aside what is rated in the upper half of \"{answer.Stress.Name}\"; what is left is lower in this flag, not free of it. Scores are those of the house."]);

    private static AnswerSection Whole(SoreAnswer answer)
    {
        var (touched, kept) = (answer.Findings.Count(finding => finding.After.SetAside.Length > 0), answer.Findings.Count(finding => finding.First is not null && finding.KeepsFirst));
        return new AnswerSection(null, touched == 0
            ? $"No list holds a movement that is rated to load the {answer.Joint} more."
            : $"{NumberText.Count(touched)} of {NumberText.Count(answer.Findings.Length)} lists set movements aside; {NumberText.Count(kept)} keep their first choice.", []);
    }

    private static AnswerSection Section(SoreAnswer answer, SoreFinding finding)
    {
        var aside = finding.After.SetAside.Where(row => row.Kind == SetAsideKind.SoreJoint).Select(row => row.Row.Movement.Name).ToList();
        AnswerLine[] avoid = aside.Count == 0 ? [] : [AnswerLine.Of("Avoid for now", FactText.Join(aside), new FiguresPart { Count = aside.Count })];
        return new AnswerSection(finding.Before.Target.Name, Lead(finding), [.. avoid, .. Left(answer, finding), .. Pays(finding), .. Cousin(answer, finding)]);
    }

    private static string Lead(SoreFinding finding) => finding switch
    {
        { Left: null } => "nothing is left in this list for now.",
        { KeepsFirst: true } => $"{finding.First!.Row.Movement.Name} stays the first choice.",
        _ => $"the first choice falls by {NumberText.Points(finding.First!.Score - finding.Left!.Score)} points, from {finding.First.Row.Movement.Name} ({NumberText.Points(finding.First.Score)}) to {finding.Left.Row.Movement.Name} ({NumberText.Points(finding.Left.Score)}).",
    };

    private static IEnumerable<AnswerLine> Left(SoreAnswer answer, SoreFinding finding) => finding.Left is not { } left ? [] :
        [AnswerLine.Of("Best left", $"{left.Row.Movement.Name}, {left.Tier.Name}; {Flag(answer, left)}", new FiguresPart { Movement = left.Row.Movement.Name, Tier = left.Tier.Name, Points = left.Score })];

    private static string Flag(SoreAnswer answer, Tiering.Placement placement)
    {
        var rated = placement.Row.Movement.Facts[answer.Stress.Index].Value;
        return rated.IsKnown ? $"lower in this flag ({answer.Stress.Name} {FactText.Value(answer.Stress, rated)})" : $"could not tell: {answer.Stress.Name} is not recorded";
    }

    private static IEnumerable<AnswerLine> Pays(SoreFinding finding)
    {
        var (old, left) = (finding.First!.Row.Movement.Name, finding.Left?.Row.Movement.Name);
        return finding.Payers.Where(reason => reason.Points > 0).Take(MostReasons).Select((reason, at) => AnswerLine.Of(
            at == 0 ? "What pays" : "", $"{reason.Name} {NumberText.Signed(-reason.Points)}{Facts(reason, old, left!)}",
            new FiguresPart { Points = -reason.Points, Movement = left, Other = old, Rule = (reason.Award?.Rule.Info ?? reason.Upper?.Criterion.Info ?? reason.Lower?.Criterion.Info) is { } info ? JsonParts.Rule(info) : null }));
    }

    private static string Facts(OrderReason reason, string old, string left) => reason is { Upper: { } upper, Lower: { } lower }
        ? $": {left} {FactText.Value(lower.Attribute, lower.Fact.Value)}, {old} {FactText.Value(upper.Attribute, upper.Fact.Value)}"
        : "";

    private static IEnumerable<AnswerLine> Cousin(SoreAnswer answer, SoreFinding finding)
    {
        if (finding.Cousin is not { } cousin || cousin.Row.Index == finding.Left!.Row.Index || double.IsNaN(finding.Likeness))
        {
            return [];
        }

        return
        [
            AnswerLine.Of("Most like it", $"{cousin.Row.Movement.Name}, {NumberText.Whole(100 * finding.Likeness)} % alike, {NumberText.Points(cousin.Score)} points, {cousin.Tier.Name}; {Flag(answer, cousin)}",
                new FiguresPart { Movement = cousin.Row.Movement.Name, Other = finding.First!.Row.Movement.Name, Share = finding.Likeness, Points = cousin.Score, Tier = cousin.Tier.Name }),
        ];
    }
}
