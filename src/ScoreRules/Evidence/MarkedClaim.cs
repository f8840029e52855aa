using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Evidence;

/// <summary>What a study says in a target, beside what the principles say of the same two before any study is weighed.</summary>
/// <param name="Target">The target.</param>
/// <param name="Claim">What the study says.</param>
/// <param name="PrincipleLead">First side less second on principle, in points.</param>
/// <param name="LeadFromOthers">The same after all other studies that count, this one left out; in points.</param>
/// <param name="Criteria">By criterion, in the order of the house: points of the first side less those of the second; left out where it does not count.</param>
public sealed record MarkedClaim(TargetDefinition Target, StudyClaim Claim, double PrincipleLead, double LeadFromOthers, ImmutableArray<(string Criterion, double Lead)> Criteria)
{
    // Under half a point two movements are called level everywhere.
    private const double Level = 0.5;

    /// <summary>1 when the study found the first side better, -1 the second, 0 when it found no difference.</summary>
    public int Direction => Claim.Direction;

    /// <summary>How the principles fare against it.</summary>
    public ClaimMark Mark => Of(PrincipleLead);

    /// <summary>How the principles and the other studies together fare against it.</summary>
    public ClaimMark MarkFromOthers => Of(LeadFromOthers);

    /// <summary>How far the principles lie outside of what the study says, in points; 0 when they lie inside.</summary>
    public double Miss => Math.Max(0, Math.Max(Claim.Low - PrincipleLead, PrincipleLead - Claim.High));

    /// <summary>Whether a lead of a criterion or a score goes the study's way.</summary>
    public ClaimMark Of(double lead) => Direction switch
    {
        0 => lead >= Claim.Low - 1e-9 && lead <= Claim.High + 1e-9 ? ClaimMark.Hit : ClaimMark.Missed,
        _ when Math.Abs(lead) < Level => ClaimMark.Level,
        var direction => Math.Sign(lead) == direction ? ClaimMark.Hit : ClaimMark.Missed,
    };
}
