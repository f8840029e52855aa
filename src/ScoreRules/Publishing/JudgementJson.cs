using System.Collections.Immutable;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using ScoreRules.Catalogue;
using ScoreRules.Certainty;
using ScoreRules.Comparing;
using ScoreRules.Guarding;
using ScoreRules.Guarding.Breaking;
using ScoreRules.Guarding.Exercising;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Modelling;
using ScoreRules.Profiles;
using ScoreRules.Publishing.Derivation;
using ScoreRules.Publishing.Json;
using ScoreRules.Publishing.Vocabulary;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>Judgements as JSON, for programs: the same content as the text forms, numbers unrounded.</summary>
public static class JudgementJson
{
    /// <summary>Version of the JSON forms.</summary>
    internal const int SchemaVersion = 1;

    /// <summary>How they are written: readable quotes and accents, since the output is a file or a terminal, never a script block.</summary>
    internal static readonly OutputContext Context = new(new JsonSerializerOptions(OutputContext.Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    /// <summary>Version of the program.</summary>
    public static string ToolVersion => typeof(JudgementJson).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";

    /// <summary>Rankings.</summary>
    public static string Rank(Judgement judgement, IReadOnlyList<TargetRanking> rankings, HouseCertainty? certainty = null)
    {
        var parts = new JsonParts(judgement.Explainer!, judgement.Ruleset, certainty);
        var view = judgement.Profile is { } profile ? new ProfileView(judgement.Ruleset, judgement.Inferred!, profile) : null;
        var cautions = new CautionList(rankings, judgement.Explainer!).At(CautionPlace.AboveTheRanking, CautionPlace.AtTheFoot);
        var document = new RankDocument(
            SchemaVersion, ToolVersion, Sentences.Education, House(judgement), judgement.Profile?.Name, Inputs(judgement),
            [.. cautions.Select(caution => JsonParts.Caution(caution.Caution, caution.Undecided))],
            [.. rankings.Select(ranking => Target(parts, ranking, view?.Of(ranking)))],
            [.. (judgement.Evidence?.NotCounted ?? []).Select(entry => EvidenceParts.NotCounted(entry, judgement.Ruleset))],
            [.. judgement.Expectations.Select(result => new ExpectationPart(result.Holds, result.Found, JsonParts.Rule(result.Expectation.Info)))],
            [.. judgement.Findings.Where(finding => finding.Severity == Severity.Error).Select(JsonParts.Finding)],
            [.. judgement.Ruleset.Amendments.Select(JsonParts.Amendment)],
            [.. judgement.Ruleset.NotInForce.Select(JsonParts.Rule)],
            [.. judgement.Ruleset.NotYetApplied.Select(JsonParts.Later)]);
        return JsonSerializer.Serialize(document, Context.RankDocument) + "\n";
    }

    /// <summary>Explanations of one movement.</summary>
    public static string Explain(Judgement judgement, Movement movement, IReadOnlyList<TargetRanking> rankings, HouseCertainty? certainty = null)
    {
        var parts = new JsonParts(judgement.Explainer!, judgement.Ruleset, certainty);
        var document = new ExplainDocument(
            SchemaVersion, ToolVersion, Sentences.Education, House(judgement), Inputs(judgement), movement.Name,
            [.. rankings.Select(ranking => parts.Target(ranking, other => other.Index == movement.Index, withTrail: true, []))]);
        return JsonSerializer.Serialize(document, Context.ExplainDocument) + "\n";
    }

    /// <summary>What mechanics derives for one movement and one target.</summary>
    /// <param name="judgement">The house.</param>
    /// <param name="derived">What mechanics derives, with intervals.</param>
    public static string Derive(Judgement judgement, DerivedMovement derived)
    {
        var (facts, ruleset) = (derived.Facts, judgement.Ruleset);
        var row = judgement.Inferred?.Facts.Rows.FirstOrDefault(row => row.Movement.Index == derived.Movement.Index && row.Target.Index == derived.Target.Index);
        var document = new DeriveDocument(
            SchemaVersion, ToolVersion, Sentences.Education, House(judgement), Inputs(judgement), derived.Movement.Name, derived.Target.Name,
            row is null ? [] : [.. judgement.Explainer!.CautionsOf(row).Select(JsonParts.Caution)],
            facts is null ? null : DeriveWords.Method(facts.Profile.Mechanism.Method),
            facts is null ? null : DeriveWords.Motion(facts.Profile.Mechanism.WorkingJoint),
            facts is null ? null : DeriveParts.Person(ruleset, facts.Profile.Mechanism.Person),
            facts is null ? [] : DeriveParts.Used(facts),
            facts is null ? [] : facts.Profile.Assumptions,
            facts is null ? [] : DeriveParts.Facts(facts, MuscleFacts.Of(facts, ruleset.House is { AcceptsEvenLoad: true } || derived.Movement.AcceptsEvenLoad)),
            facts is null ? null : DeriveParts.Curve(LoadShape.Of(facts)),
            facts is null ? [] : [.. facts.Helping.Select(span => new SpanPart(span.FromDegrees, span.ToDegrees))],
            [.. RatingComparison.Of(ruleset, derived).Select(DeriveParts.Rated)],
            DeriveParts.Missing(derived));
        return JsonSerializer.Serialize(document, Context.DeriveDocument) + "\n";
    }

    /// <summary>Findings.</summary>
    public static string Check(IReadOnlyList<Diagnostic> findings, IReadOnlyList<BoundRuleset> rulesets)
    {
        var document = new CheckDocument(
            SchemaVersion, ToolVersion, Sentences.Education,
            findings.Count(finding => finding.Severity == Severity.Error), findings.Count(finding => finding.Severity == Severity.Warning),
            [.. findings.Select(JsonParts.Finding)], [.. rulesets.SelectMany(ruleset => ruleset.Amendments).Select(JsonParts.Amendment)], [.. rulesets.SelectMany(ruleset => ruleset.NotYetApplied).Select(JsonParts.Later)]);
        return JsonSerializer.Serialize(document, Context.CheckDocument) + "\n";
    }

    /// <summary>Expectations, each that fails with the two movements behind it.</summary>
    /// <param name="judgement">The house.</param>
    /// <param name="rules">Rules with the expectations that exercise them; null when nobody asked.</param>
    /// <param name="breakages">What became of breakages; null when nobody asked.</param>
    public static string Test(Judgement judgement, IReadOnlyList<ExercisedRule>? rules = null, BreakageReport? breakages = null)
    {
        var held = judgement.Expectations.Count(result => result.Holds);
        var document = new TestDocument(
            SchemaVersion, ToolVersion, Sentences.Education, House(judgement), Inputs(judgement), held, judgement.Expectations.Length - held,
            [.. judgement.Expectations.Select(result => JsonParts.Tested(judgement, result))],
            [.. TestRule.Failing(judgement).Select(JsonParts.Finding)],
            rules is null ? null : GuardParts.Exercised(rules),
            breakages is null ? null : GuardParts.Breakages(breakages));
        return JsonSerializer.Serialize(document, Context.TestDocument) + "\n";
    }

    /// <summary>The contents of a published edition.</summary>
    /// <param name="judgement">The edition's own rule text, judged.</param>
    /// <param name="date">The day of the edition.</param>
    /// <param name="isTheHouses">Whether the house names that day.</param>
    /// <param name="files">Every other file of it.</param>
    /// <exception cref="InvalidOperationException">The house has no name.</exception>
    internal static string Edition(Judgement judgement, DateOnly date, bool isTheHouses, ImmutableArray<EditionFilePart> files)
    {
        var house = judgement.Ruleset.House;
        var document = new EditionDocument(
            SchemaVersion, ToolVersion, Sentences.Education, House(judgement) ?? throw new InvalidOperationException("The house has no name."),
            Publishing.Edition.Of(judgement).Fingerprint, Iso(date)!, isTheHouses, house!.WrittenBy, house.CheckedBy, files);
        return JsonSerializer.Serialize(document, Context.EditionDocument) + "\n";
    }

    /// <summary>Whether editions are what their rules say.</summary>
    public static string Verify(ImmutableArray<VerifiedPart> editions, ImmutableArray<string> listFaults) =>
        JsonSerializer.Serialize(new VerifyDocument(SchemaVersion, ToolVersion, Sentences.Education, editions, listFaults), Context.VerifyDocument) + "\n";

    /// <summary>What differs between two houses.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="targets">The lists wanted.</param>
    public static string Compare(HouseComparison comparison, IReadOnlyList<TargetComparison> targets)
    {
        var (old, now) = (comparison.Old, comparison.New);
        var document = new CompareDocument(
            SchemaVersion, ToolVersion, Sentences.Education, House(old), Inputs(old), House(now), Inputs(now),
            [.. comparison.Cautions.Select(CompareParts.Caution)],
            [.. comparison.Changes.Select(CompareParts.Change)],
            [.. comparison.RenamedTiers.Select(pair => new RenamedTierPart(pair.Old.Name, pair.New.Name))],
            [.. comparison.GoneTargets.Select(target => target.Name)],
            [.. comparison.NewTargets.Select(target => target.Name)],
            [.. targets.Select(CompareParts.Target)]);
        return JsonSerializer.Serialize(document, Context.CompareDocument) + "\n";
    }

    /// <summary>Words.</summary>
    public static string Words(Judgement judgement, IEnumerable<WordEntry> words)
    {
        var document = new WordsDocument(SchemaVersion, ToolVersion, Sentences.Education, House(judgement), Inputs(judgement), [.. words.Select(JsonParts.Word)]);
        return JsonSerializer.Serialize(document, Context.WordsDocument) + "\n";
    }

    private static TargetPart Target(JsonParts parts, TargetRanking ranking, PersonalRanking? personal) =>
        parts.Target(personal?.Ranking ?? ranking, _ => true, withTrail: false, personal is null ? [] : JsonParts.SetAside(personal));

    /// <summary>The house.</summary>
    internal static RulesetPart? House(Judgement judgement) => judgement.Ruleset.House is { } house
        ? new RulesetPart(house.Name, house.Version, house.Judges, Iso(house.CheckedOn), [.. judgement.Ruleset.Bases.Select(below => new BasePart(below.Name, below.Version))], Iso(judgement.Ruleset.Date))
        : null;

    private static string? Iso(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The files read.</summary>
    internal static ImmutableArray<InputPart> Inputs(Judgement judgement) => [.. judgement.Sources.Files.Select(file => new InputPart(file.Path, file.Sha256))];
}
