using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Checks that the lines of one study go together: one strength, regional lines about the study's own pair, a difference by region shown by them.</summary>
internal sealed class StudyLines(BindContext context)
{
    private static readonly ClauseSpec<NoContent>[] Strengths = [EvidenceGrammar.ShowIt, EvidenceGrammar.WeighIt, EvidenceGrammar.LetItDecide];

    /// <summary>Reports lines that do not.</summary>
    public void Check(IReadOnlyList<FindingSyntax> findings, StatementSyntax statement)
    {
        CheckStrengths(statement);
        if (findings.Count > 1 && statement.Find(EvidenceGrammar.Compares)?.Content.Level == "movements")
        {
            CheckRegions(findings, statement);
        }

        foreach (var split in findings.Where(finding => finding.Verdict == StudyVerdict.Split && statement.IsWhole))
        {
            CheckSplit(split, findings, statement);
        }
    }

    private void CheckStrengths(StatementSyntax statement)
    {
        var said = Strengths.Where(statement.Has).Select(spec => statement.Find(spec)!).OrderBy(line => line.Span.Start).ToList();
        if (said.Count > 1)
        {
            context.Report("SR1008", Severity.Error, "A study has one strength: it is shown, weighed, or it decides", statement, said[1].Span, "second strength", [new Label(statement.At(said[0].Span), "first strength")], new Suggestion("keep one of them"));
        }
    }

    // A slip in one name of a regional line would speak of another pair, and nobody would see it.
    private void CheckRegions(IReadOnlyList<FindingSyntax> findings, StatementSyntax statement)
    {
        var wholes = findings.Where(finding => finding.Regions.IsEmpty).Select(Pair).ToHashSet();
        var own = wholes.Count > 0 ? wholes : [Pair(findings[0])];
        foreach (var stray in findings.Where(finding => !finding.Regions.IsEmpty && !own.Contains(Pair(finding))))
        {
            context.Report("SR6003", Severity.Error, "A line for a region compares other movements than its study does", statement, stray.First.Span.Cover(stray.Second.Span), "another pair",
                [new Label(statement.At(findings[0].First.Span.Cover(findings[0].Second.Span)), "the study's pair")], new Suggestion("name the study's own two movements, or write another study"));
        }
    }

    private void CheckSplit(FindingSyntax split, IReadOnlyList<FindingSyntax> findings, StatementSyntax statement)
    {
        var regional = findings.Where(finding => !finding.Regions.IsEmpty && finding.Verdict is StudyVerdict.BetterThan or StudyVerdict.MeasuredBetter && Pair(finding) == Pair(split)).ToList();
        if (regional.Exists(finding => finding.First.Key == split.First.Key) && regional.Exists(finding => finding.First.Key == split.Second.Key))
        {
            return;
        }

        context.Error("SR6004", "A difference by region is told region by region", statement, split.First.Span.Cover(split.Second.Span), "no two lines that go opposite ways",
            new Suggestion("add a \"found\" line for each region, at least one each way, such as \"found A is slightly better than B for semimembranosus\""));
    }

    private static (string, string) Pair(FindingSyntax finding) =>
        string.CompareOrdinal(finding.First.Key, finding.Second.Key) < 0 ? (finding.First.Key, finding.Second.Key) : (finding.Second.Key, finding.First.Key);
}
