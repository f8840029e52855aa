using Humanizer;
using ScoreRules.Answers.Kit;
using ScoreRules.Publishing.Json;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Answers;

/// <summary>What is lost without some kit, in words.</summary>
internal static class LossWords
{
    /// <summary>The answer.</summary>
    public static AnswerPage Of(LossAnswer answer)
    {
        var lists = answer.Findings.Where(finding => finding.ShowsAtTheTop).Select(Section);
        return new AnswerPage(answer, [Whole(answer), .. lists], [$"{Whose(answer)} Tiers and points are those of the house; only what can be done is left in a list. A movement whose kit is not recorded stays."]);
    }

    private static string Whose(LossAnswer answer) => answer.Profile is { } profile ? $"Seen through the profile {profile.Name}." : "Seen with all kit that a movement needs.";

    private static AnswerSection Whole(LossAnswer answer)
    {
        var kit = FactText.Join(answer.Kit);
        var (gone, shown, inside) = (answer.Findings.Count(finding => !finding.Gone.IsEmpty), answer.Findings.Count(finding => finding.ShowsAtTheTop), answer.Findings.Sum(finding => finding.Gone.Length));
        if (gone == 0)
        {
            return new AnswerSection(null, $"Nothing is lost without {kit}: no movement that can be done needs it.", []);
        }

        var top = shown == 0 ? "the first three stay the same everywhere" : $"one of the first three changes in {NumberText.Count(shown)} of them";
        return new AnswerSection(null, $"Without {kit}, {"placement".ToQuantity(inside)} in {"list".ToQuantity(gone)} cannot be had any more; {top}.", []);
    }

    private static AnswerSection Section(LossFinding finding)
    {
        var lead = finding switch
        {
            { After.IsEmpty: true } => "nothing is left in this list.",
            { Loss: > 0 } => $"the first choice falls by {NumberText.Points(finding.Loss)} points.",
            _ => "the first choice stays.",
        };
        return new AnswerSection(finding.Target.Name, lead,
        [
            Line("Before", finding.Before), Line("After", finding.After),
            AnswerLine.Of("Gone", FactText.Join(finding.Gone.Select(placement => placement.Row.Movement.Name)), new FiguresPart { Count = finding.Gone.Length, Points = double.IsNaN(finding.Loss) ? null : finding.Loss }),
        ]);
    }

    private static AnswerLine Line(string label, IReadOnlyList<Placement> first) => AnswerLine.Of(
        label,
        first.Count == 0 ? "nothing" : string.Join(", ", first.Select(placement => $"{placement.Row.Movement.Name} {NumberText.Points(placement.Score)} ({placement.Tier.Name})")),
        first.Count == 0 ? null : new FiguresPart { Movement = first[0].Row.Movement.Name, Points = first[0].Score, Tier = first[0].Tier.Name });
}
