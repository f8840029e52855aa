using ScoreRules.Catalogue;
using ScoreRules.Catalogue.Csv;
using ScoreRules.Explanation;
using ScoreRules.Guarding;
using ScoreRules.Houses;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Scoring;
using ScoreRules.Tiering;

namespace ScoreRules;

/// <summary>The whole job: read, check, infer, score, tier, explain. Pure: the same files give the same judgement.</summary>
public static class Judge
{
    /// <summary>Judges a house.</summary>
    public static Judgement Run(HouseSources sources)
    {
        var reader = RulesetReader.Read(sources.Files.Where(file => !file.IsSpreadsheet).Select(file => new SourceText(file.Path, file.Text)));
        var findings = reader.Findings;
        findings.AddRange(sources.Findings);
        var sheets = sources.Files.Where(file => file.IsSpreadsheet).SelectMany(file => CsvCatalogueReader.Read(file.Path, file.Text, reader.Attributes, reader.Targets, findings));
        var ruleset = reader.Bind([.. sheets]);
        var catalogue = CatalogueBuilder.Build(ruleset, findings);
        var judgement = new Judgement(sources, ruleset, catalogue, []);
        return findings.HasErrors ? judgement with { Findings = findings.ToSorted() } : Rank(judgement, findings);
    }

    private static Judgement Rank(Judgement judgement, DiagnosticBag findings)
    {
        var (ruleset, catalogue) = (judgement.Ruleset, judgement.Catalogue);
        var inferred = Infer(ruleset, catalogue);
        RefusalFindings.Report(ruleset, inferred, findings);
        var scores = Scorer.Score(ruleset, inferred);
        ScoreFindings.Report(ruleset, inferred, scores, findings);
        var rankings = ruleset.Tiers.IsEmpty ? [] : new Ranker(ruleset, catalogue, inferred, scores, findings).Rank();
        var expectations = rankings.IsEmpty ? [] : new ExpectationCheck(ruleset, catalogue, inferred, rankings).Run();
        findings.AddRange(ExpectationCheck.Findings(expectations));
        return findings.HasErrors
            ? judgement with { Findings = findings.ToSorted() }
            : judgement with
            {
                Findings = findings.ToSorted(),
                Rankings = rankings,
                Inferred = inferred,
                Explainer = new Explainer(ruleset, inferred, scores),
                Expectations = expectations,
            };
    }

    private static InferenceResult Infer(BoundRuleset ruleset, MovementCatalogue catalogue)
    {
        var rows = PlacementRows.Build(ruleset, catalogue);
        var likeness = BenchmarkLikeness.Column(ruleset, catalogue, rows);
        return InferenceEngine.Infer(ruleset, FactTable.Build(ruleset, rows, new FactTableInputs([], likeness)));
    }
}
