using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using ScoreRules.Catalogue;
using ScoreRules.Catalogue.Csv;
using ScoreRules.Evidence;
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
    // A question judges the same rules over many supposed facts; making them ready costs most of the time.
    private static readonly ConditionalWeakTable<BoundRuleset, InferencePlan> Plans = [];

    /// <summary>Judges a house.</summary>
    /// <param name="sources">Its files.</param>
    /// <param name="profile">Name of the profile to judge for; null for nobody in particular.</param>
    /// <param name="date">The day to judge for; null for the day on which the house says it was checked.</param>
    /// <exception cref="HouseException">The house has no such profile.</exception>
    public static Judgement Run(HouseSources sources, string? profile = null, DateOnly? date = null) => Run(sources, new JudgeOptions { Profile = profile, Date = date });

    /// <summary>Judges a house.</summary>
    /// <param name="sources">Its files.</param>
    /// <param name="options">How.</param>
    /// <exception cref="HouseException">The house has no such profile.</exception>
    public static Judgement Run(HouseSources sources, JudgeOptions options)
    {
        var reader = RulesetReader.Read(sources.Rules(), new Surroundings(sources.Nearby, options.Date));
        var findings = reader.Findings;
        findings.AddRange(sources.Findings);
        var sheets = sources.Files.Where(file => file.IsSpreadsheet && reader.IsComplete).SelectMany(file => CsvCatalogueReader.Read(file.Path, file.Text, reader.Attributes, reader.Targets, findings));
        var ruleset = WeightResolution.Resolve(reader.Bind([.. sheets]), findings);
        var catalogue = CatalogueBuilder.Build(ruleset, findings);
        GeometryFindings.Report(ruleset, catalogue, findings);
        var judgement = new Judgement(sources, ruleset, catalogue, []);
        if (findings.HasErrors)
        {
            return options.DespiteErrors && reader.IsComplete ? Rank(judgement with { Profile = Choose(ruleset, options.Profile) }, findings, despiteErrors: true) : judgement with { Findings = findings.ToSorted() };
        }

        reader.CheckNames();
        return Rank(judgement with { Profile = Choose(ruleset, options.Profile) }, findings, options.DespiteErrors);
    }

    /// <summary>
    /// Judges once more with rules or facts changed, as a whole: called facts, limits and evidence are found anew, nothing is approximated.
    /// Checks are not run again; a target that can no longer be scored has no ranking.
    /// </summary>
    /// <param name="before">What was judged.</param>
    /// <param name="ruleset">The rules now.</param>
    /// <param name="catalogue">The movements now.</param>
    public static Judgement Again(Judgement before, BoundRuleset ruleset, MovementCatalogue catalogue)
    {
        var same = ReferenceEquals(catalogue, before.Catalogue) && ruleset.Targets == before.Ruleset.Targets && ruleset.House == before.Ruleset.House;
        var derived = same ? before.Derived ?? new DerivedFactSource(ruleset) : new DerivedFactSource(ruleset);
        var inferred = Infer(ruleset, catalogue, derived, before.Profile?.Audience ?? []);
        var judged = Place(before with { Ruleset = ruleset, Catalogue = catalogue, Derived = derived, Inferred = inferred }, Scorer.Score(ruleset, inferred), new DiagnosticBag());
        return judged with { Rankings = [.. judged.Rankings.Where(IsScored)], Findings = [], Accepted = [] };
    }

    /// <summary>The same judgement for one of the house's profiles, whose audience decides which cautions are shown.</summary>
    /// <param name="before">What was judged.</param>
    /// <param name="profile">Name of the profile.</param>
    /// <exception cref="HouseException">The house has no such profile.</exception>
    public static Judgement For(Judgement before, string profile) =>
        Again(before with { Profile = Choose(before.Ruleset, profile) }, before.Ruleset, before.Catalogue);

    private static Judgement Rank(Judgement judgement, DiagnosticBag findings, bool despiteErrors)
    {
        var ruleset = judgement.Ruleset;
        var derived = new DerivedFactSource(ruleset);
        var inferred = Infer(ruleset, judgement.Catalogue, derived, judgement.Profile?.Audience ?? []);
        var scores = Scorer.Score(ruleset, inferred);
        Report(judgement, inferred, derived, scores, findings);
        var judged = Place(judgement with { Derived = derived, Inferred = inferred }, scores, findings);
        EvidenceFindings.Report(ruleset, judged.Evidence!, findings);
        BrokenOrders.Report(judged.Evidence!, judged.Rankings, findings);
        findings.AddRange(ExpectationCheck.Findings(judged.Expectations));
        if (!findings.HasErrors)
        {
            var (left, accepted) = Acceptance.Apply(findings.ToSorted(), ruleset.Accepted);
            return judged with { Findings = left, Accepted = accepted };
        }

        // Where too little is left to score a target, it is not ranked.
        ImmutableArray<TargetRanking> rankings = despiteErrors ? [.. judged.Rankings.Where(IsScored)] : [];
        return rankings.IsEmpty ? judgement with { Findings = findings.ToSorted() } : judged with { Findings = findings.ToSorted(), Rankings = rankings };
    }

    private static void Report(Judgement judgement, InferenceResult inferred, DerivedFactSource derived, ScoreTable scores, DiagnosticBag findings)
    {
        var ruleset = judgement.Ruleset;
        RefusalFindings.Report(ruleset, inferred, findings);
        RuleFindings.Report(ruleset, inferred, findings);
        RatingFindings.Report(ruleset, judgement.Catalogue, derived, findings);
        Allowance.Report(ruleset, findings);
        ScoreFindings.Report(ruleset, inferred, scores, findings);
        OverlapFindings.Report(inferred, scores, findings);
    }

    private static Judgement Place(Judgement judgement, ScoreTable scores, DiagnosticBag findings)
    {
        var (ruleset, inferred) = (judgement.Ruleset, judgement.Inferred!);
        var evidence = EvidenceWeigher.Weigh(ruleset, judgement.Catalogue, inferred.Facts.Rows, scores, findings);
        ImmutableArray<TargetRanking> Ranked(double[] points, DiagnosticBag into) => ruleset.Tiers.IsEmpty ? [] : new Ranker(ruleset, judgement.Catalogue, inferred, scores.Principle, points, into).Rank();
        var rankings = Ranked(evidence.Scores, findings);
        var onPrinciple = evidence.MovesAnything ? Ranked(scores.Principle, new DiagnosticBag()) : rankings;
        return judgement with
        {
            Rankings = rankings,
            Scores = scores,
            Evidence = evidence,
            Explainer = new Explainer(ruleset, inferred, scores, judgement.Derived) { Evidence = evidence, OnPrinciple = onPrinciple },
            Expectations = rankings.IsEmpty ? [] : new ExpectationCheck(ruleset, judgement.Catalogue, inferred, rankings).Run(),
        };
    }

    private static bool IsScored(TargetRanking ranking) => ranking.Benchmark is not null && ranking.Placements.All(placement => double.IsFinite(placement.Gap));

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

        if (ruleset.NotInForce.FirstOrDefault(info => info.Kind == "profile" && NameText.Same(info.Name!, name)) is { } absent)
        {
            throw new HouseException($"The profile \"{absent.Name}\" is not in force on {ruleset.Date!.Value.ToString("d MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture)} ({absent.Location}). Give another day with --date, or another profile.");
        }

        var all = ruleset.Profiles.Select(profile => profile.Name).ToList();
        var near = NameSuggester.Nearest(name, all);
        throw new HouseException($"There is no profile \"{name}\" in this house. {(near.IsEmpty ? all.Count == 0 ? "It has none." : $"Profiles are: {string.Join(", ", all)}." : $"Did you mean \"{near[0]}\"?")}");
    }

    private static InferenceResult Infer(BoundRuleset ruleset, MovementCatalogue catalogue, DerivedFactSource derived, ImmutableArray<int> audience)
    {
        var rows = PlacementRows.Build(ruleset, catalogue);
        var likeness = BenchmarkLikeness.Column(ruleset, catalogue, rows);
        return Plans.GetValue(ruleset, InferencePlan.Compile).Run(FactTable.Build(ruleset, rows, new FactTableInputs(audience, likeness) { Derived = derived.Of }));
    }
}
