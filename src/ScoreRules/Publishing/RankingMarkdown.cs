using System.Text;
using Humanizer;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>Rankings as Markdown, for a wiki or a message: the edition and cautions first, a table for each tier.</summary>
public sealed class RankingMarkdown(Judgement judgement)
{
    private readonly Explainer explainer = judgement.Explainer ?? throw new InvalidOperationException("Nothing was ranked.");
    private readonly StringBuilder page = new();

    /// <summary>The rankings given, as the judgement's profile sees them if it has one.</summary>
    public string Print(IReadOnlyList<TargetRanking> whole)
    {
        var listed = ListedTarget.Of(judgement, whole);
        var cautions = new CautionList(listed.Select(target => target.Ranking), explainer);
        PrintHead(cautions);
        foreach (var target in listed)
        {
            PrintTarget(target);
        }

        foreach (var (caution, _, _) in cautions.At(CautionPlace.AtTheFoot))
        {
            Paragraph($"**{(caution.Severity == CautionSeverity.Stop ? "Stop" : "Caution")}:** {Escaped(caution.Text)}");
        }

        Paragraph($"{Escaped(Edition.Of(judgement).Text)}. Points are rounded after adding. {Sentences.Education}");
        return page.ToString().TrimEnd('\n') + "\n";
    }

    private void PrintHead(CautionList cautions)
    {
        var edition = Edition.Of(judgement);
        Paragraph($"# {Escaped(edition.House)}");
        Paragraph($"{Escaped(edition.Text)}{(judgement.Profile is { } profile ? $", profile {Escaped(profile.Name)}" : "")}. {Sentences.Education}");
        foreach (var broken in judgement.Findings.Where(finding => finding.Severity == Language.Diagnostics.Severity.Error))
        {
            Paragraph($"**Not complete:** {Escaped(Language.Diagnostics.DiagnosticText.Short(broken))}");
        }

        foreach (var (caution, _, _) in cautions.At(CautionPlace.AboveTheRanking))
        {
            Paragraph($"**First:** {Escaped(caution.Text)}");
        }

        foreach (var failed in judgement.Expectations.Where(result => !result.Holds))
        {
            Paragraph($"**Expectation fails** ({failed.Expectation.Info.Location}): {Escaped(failed.Found)}");
        }
    }

    private void PrintTarget(ListedTarget target)
    {
        var ranking = target.Ranking;
        Paragraph($"## {Escaped(Sentences.Capital(ranking.Target.Name))}");
        Paragraph($"{"movement".ToQuantity(ranking.Placements.Length)}{(ranking.Benchmark is { } benchmark ? $", against the {Escaped(benchmark.Movement.Name)}" : "")}.");
        var better = (TierDefinition?)null;
        foreach (var tier in judgement.Ruleset.Tiers)
        {
            PrintTier(ranking, tier, better);
            better = tier;
        }

        foreach (var row in ranking.LeftOut)
        {
            Paragraph($"**Left out:** {Escaped(row.Row.Movement.Name)}. {Escaped(Sentences.Verdict(explainer.Explain(ranking, row.Row.Movement)!))}");
        }

        foreach (var group in target.Personal?.SetAside.GroupBy(PersonalText.Why, StringComparer.Ordinal) ?? [])
        {
            Paragraph($"**Set aside,** {Escaped(group.Key)}: {Escaped(string.Join(", ", group.Select(row => row.Row.Movement.Name)))}.");
        }
    }

    private void PrintTier(TargetRanking ranking, TierDefinition tier, TierDefinition? better)
    {
        var inside = ranking.Placements.Where(placement => placement.Tier.Index == tier.Index).ToList();
        if (inside.Count == 0)
        {
            return;
        }

        Paragraph($"### {Escaped(tier.Name)} ({Sentences.Range(tier, better)})");
        page.Append("| no. | movement | first | points | gap | in short |\n| --- | --- | --- | ---: | ---: | --- |\n");
        foreach (var placement in inside)
        {
            var explained = explainer.Explain(ranking, placement.Row.Movement)!;
            page.Append(System.Globalization.CultureInfo.InvariantCulture, $"| {placement.Rank}{(placement.IsTied ? "=" : "")} | {Escaped(placement.Row.Movement.Name)} | {Escaped(Sentences.First(explained))} | {NumberText.Points(placement.Score)} | {(placement.IsBenchmark ? "benchmark" : NumberText.Signed(placement.Gap))} | {Escaped(Sentences.Verdict(explained))} |\n");
        }

        page.Append('\n');
    }

    private void Paragraph(string text) => page.Append(text).Append("\n\n");

    private static string Escaped(string text) => MarkdownText.Escaped(text);
}
