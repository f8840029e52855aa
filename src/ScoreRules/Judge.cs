using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Catalogue.Csv;
using ScoreRules.Explanation;
using ScoreRules.Guarding;
using ScoreRules.Houses;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Modelling;
using ScoreRules.Scoring;
using ScoreRules.Tiering;

namespace ScoreRules;

/// <summary>The whole job: read, check, infer, score, tier, explain. Pure: the same files give the same judgement.</summary>
public static class Judge
{
    /// <summary>Judges a house.</summary>
    /// <param name="sources">Its files.</param>
    /// <param name="profile">Name of the profile to judge for; null for nobody in particular.</param>
    /// <exception cref="HouseException">The house has no such profile.</exception>
    public static Judgement Run(HouseSources sources, string? profile = null)
    {
        var reader = RulesetReader.Read(sources.Files.Where(file => !file.IsSpreadsheet).Select(file => new SourceText(file.Path, file.Text)));
        var findings = reader.Findings;
        findings.AddRange(sources.Findings);
        var sheets = sources.Files.Where(file => file.IsSpreadsheet).SelectMany(file => CsvCatalogueReader.Read(file.Path, file.Text, reader.Attributes, reader.Targets, findings));
        var ruleset = WeightResolution.Resolve(reader.Bind([.. sheets]), findings);
        var catalogue = CatalogueBuilder.Build(ruleset, findings);
        GeometryFindings.Report(ruleset, catalogue, findings);
        var judgement = new Judgement(sources, ruleset, catalogue, []);
        if (findings.HasErrors)
        {
            return judgement with { Findings = findings.ToSorted() };
        }

        reader.CheckNames();
        return Rank(judgement with { Profile = Choose(ruleset, profile) }, findings);
    }

    private static Judgement Rank(Judgement judgement, DiagnosticBag findings)
    {
        var (ruleset, catalogue) = (judgement.Ruleset, judgement.Catalogue);
        var inferred = Infer(ruleset, catalogue, judgement.Profile?.Audience ?? []);
        RefusalFindings.Report(ruleset, inferred, findings);
        RuleFindings.Report(ruleset, inferred, findings);
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

    private static ProfileDefinition? Choose(BoundRuleset ruleset, string? name)
    {
        if (name is null)
        {
            return null;
        }

        if (ruleset.Profiles.FirstOrDefault(profile => NameText.Same(profile.Name, name)) is { } found)
        {
            return found;
        }

        var all = ruleset.Profiles.Select(profile => profile.Name).ToList();
        var near = NameSuggester.Nearest(name, all);
        throw new HouseException($"There is no profile \"{name}\" in this house. {(near.IsEmpty ? all.Count == 0 ? "It has none." : $"Profiles are: {string.Join(", ", all)}." : $"Did you mean \"{near[0]}\"?")}");
    }

    private static InferenceResult Infer(BoundRuleset ruleset, MovementCatalogue catalogue, ImmutableArray<int> audience)
    {
        var rows = PlacementRows.Build(ruleset, catalogue);
        var likeness = BenchmarkLikeness.Column(ruleset, catalogue, rows);
        return InferenceEngine.Infer(ruleset, FactTable.Build(ruleset, rows, new FactTableInputs(audience, likeness)));
    }
}
