using Humanizer;
using ScoreRules.Explanation;
using ScoreRules.Guarding;
using ScoreRules.Inference;
using ScoreRules.Language;

namespace ScoreRules.Publishing;

/// <summary>Expectations for a terminal: each that fails with the two explanations behind it side by side.</summary>
public sealed class ExpectationText(Judgement judgement)
{
    private const int NameWidth = 28;
    private const int MovementWidth = 20;

    /// <summary>What fails, and how many hold.</summary>
    public string Print()
    {
        var block = new TextBlock();
        foreach (var result in judgement.Expectations.Where(result => !result.Holds))
        {
            PrintFailed(block, result);
            block.Blank();
        }

        var kept = judgement.Expectations.Count(result => result.Holds);
        block.Wrapped(judgement.Expectations.IsEmpty
            ? "This house expects nothing yet. A line such as \"expect seated leg curl is above lying leg curl\" says what must stay true."
            : $"{NumberText.Count(kept)} of {"expectation".ToQuantity(judgement.Expectations.Length)} hold.");
        return block.ToString();
    }

    /// <summary>One that fails.</summary>
    public string Print(ExpectationResult result)
    {
        var block = new TextBlock();
        PrintFailed(block, result);
        return block.ToString();
    }

    private void PrintFailed(TextBlock block, ExpectationResult result)
    {
        block.Labelled("Fails", $"{result.Expectation.Info.Location.Text} ({result.Expectation.Info.Location})");
        block.Labelled("Found", $"{result.Found}.");
        if (result.Expectation.Info.Because is { } because)
        {
            block.Labelled("Because", because);
        }

        if (ExpectationComparison.Of(judgement, result) is { } comparison)
        {
            PrintSideBySide(block, comparison);
        }
        else if (result.Expectation.Kind is ClaimKind.Called or ClaimKind.OtherThan)
        {
            block.Labelled("Why", Called(result));
        }
    }

    private static void PrintSideBySide(TextBlock block, PlacementComparison comparison)
    {
        block.Blank();
        Row(block, "points", Title(comparison.First), Title(comparison.Second), "apart");
        foreach (var part in comparison.Parts)
        {
            Row(block, part.Name, NumberText.Points(part.First), NumberText.Points(part.Second), NumberText.Signed(part.Apart));
        }

        Row(block, "score", NumberText.Points(comparison.First.PrincipleScore), NumberText.Points(comparison.Second.PrincipleScore), NumberText.Signed(comparison.First.PrincipleScore - comparison.Second.PrincipleScore));
        Row(block, "tier", Tier(comparison.First), Tier(comparison.Second), "");
    }

    private static void Row(TextBlock block, string name, string first, string second, string apart) =>
        block.Line($"  {TextBlock.Fit(name, NameWidth)}{Right(first)}{Right(second)}{apart,8}");

    private static string Right(string words)
    {
        var cut = TextBlock.Fit(words, MovementWidth - 2).TrimEnd();
        return new string(' ', Math.Max(0, MovementWidth - Language.Text.DisplayColumns.Width(cut))) + cut;
    }

    private static string Title(PlacementExplanation explained) => explained.Row.Movement.Name;

    private static string Tier(PlacementExplanation explained) => explained.Placement?.Tier.Name ?? "left out";

    private string Called(ExpectationResult result)
    {
        var movement = judgement.Catalogue.Find(result.Expectation.Movement!)!;
        var ranking = judgement.Rankings.First(ranking => judgement.Explainer!.Explain(ranking, movement) is not null);
        var fact = judgement.Explainer!.Explain(ranking, movement)!.CalledFacts.First(fact => Language.Text.NameText.Same(fact.Name, result.Expectation.Reference!));
        var (call, trace) = fact.Ways.FirstOrDefault(way => way.Trace.Verdict == fact.Verdict, fact.Ways[0]);
        return $"{(fact.Verdict == Verdict.Held ? TraceText.Held(trace) : TraceText.Failed(trace.FirstDecisive()))} ({call.Info.Location})";
    }
}
