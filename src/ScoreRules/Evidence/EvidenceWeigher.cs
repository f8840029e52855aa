using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Scoring;

namespace ScoreRules.Evidence;

/// <summary>Brings studies and principles together, target by target.</summary>
public sealed class EvidenceWeigher
{
    private readonly BoundRuleset ruleset;
    private readonly MovementCatalogue catalogue;
    private readonly ScoreTable scores;
    private readonly HeldClaims held;
    private readonly EvidenceDefinition? evidence;
    private readonly StudyReader reader;
    private readonly Kin kin;

    private EvidenceWeigher(BoundRuleset ruleset, MovementCatalogue catalogue, ScoreTable scores, DiagnosticBag findings)
    {
        (this.ruleset, this.catalogue, this.scores) = (ruleset, catalogue, scores);
        held = new HeldClaims(findings);
        evidence = ruleset.Evidence;
        reader = new StudyReader(ruleset, evidence);
        kin = new Kin(new Likeness(ruleset.Attributes), new Kinship(ruleset.Attributes));
    }

    /// <summary>Weighs all studies of a house.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="catalogue">Its movements.</param>
    /// <param name="rows">Its rows.</param>
    /// <param name="scores">Scores on principle.</param>
    /// <param name="findings">Where contradictions between studies are reported.</param>
    public static EvidenceTable Weigh(BoundRuleset ruleset, MovementCatalogue catalogue, ImmutableArray<PlacementRow> rows, ScoreTable scores, DiagnosticBag findings) =>
        new EvidenceWeigher(ruleset, catalogue, scores, findings).Weigh(rows);

    private EvidenceTable Weigh(ImmutableArray<PlacementRow> rows)
    {
        var counting = ruleset.Studies.Where(study => reader.WhyNot(study) is null).OrderBy(study => study.Name, StringComparer.Ordinal).ToList();
        var byTarget = rows.ToLookup(row => row.Target.Index);
        ImmutableArray<TargetEvidence> targets = [.. ruleset.Targets.Select(target => Weigh(target, [.. byTarget[target.Index]], counting))];
        var after = (double[])scores.Principle.Clone();
        foreach (var target in targets)
        {
            for (var i = 0; i < target.Rows.Length; i++)
            {
                after[target.Rows[i].Index] = target.Movements[i].Score;
            }
        }

        return new EvidenceTable(after, targets, NotCounted(targets));
    }

    private ImmutableArray<NotCounted> NotCounted(ImmutableArray<TargetEvidence> targets)
    {
        var counted = targets.SelectMany(target => target.Claims).Select(claim => claim.Study.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. ruleset.Studies.Where(study => !counted.Contains(study.Name)).OrderBy(study => study.Name, StringComparer.Ordinal)
                .Select(study => new NotCounted(study, reader.WhyNot(study) ?? NotCountedReason.NotRankedTogether)),
        ];
    }

    private TargetEvidence Weigh(TargetDefinition target, ImmutableArray<PlacementRow> rows, List<StudyDefinition> counting)
    {
        var chain = PlaceChain.Of(ruleset, rows);
        double[] means = [.. rows.Select(row => scores.Principle[row.Index])];
        chain.Set(means, _ => true);
        ImmutableArray<StudyClaim> claims = Array.TrueForAll(means, double.IsFinite) ? BetweenStudies.Add(counting.SelectMany(study => reader.Claims(study, target, rows)), evidence?.LoneStudyAdds ?? 0) : [];
        var account = new Account(rows, [.. rows.Select(row => scores.Principle[row.Index])], means, chain, claims);
        if (claims.IsEmpty || evidence is not { PrinciplesMayBeOff: { } doubt })
        {
            chain.Follow(account.Scores, _ => false, _ => true);
            return account.Close(target, null, evidence?.PrinciplesMayBeOff ?? double.NaN);
        }

        var tested = claims.SelectMany(claim => claim.Terms).Select(term => term.Score).ToHashSet();
        var benchmark = evidence.FreezesBenchmarks ? Benchmark(target, rows) : null;
        var belief = TargetBelief.Of(evidence, claims, means, KinGroups.Of(rows, tested, evidence.SpreadsAt, kin), benchmark);
        account.Take(belief, held);
        chain.Follow(account.Scores, tested.Contains, _ => true);
        return account.Close(target, belief, doubt);
    }

    private int? Benchmark(TargetDefinition target, ImmutableArray<PlacementRow> rows)
    {
        var movement = catalogue.Find(target.Benchmark);
        for (var i = 0; i < rows.Length; i++)
        {
            if (rows[i].Movement.Index == movement?.Index)
            {
                return i;
            }
        }

        return null;
    }
}
