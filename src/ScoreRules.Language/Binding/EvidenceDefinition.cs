using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary><c>evidence</c>: how studies and principles are brought together.</summary>
/// <param name="Info">What the statement says about itself.</param>
public sealed record EvidenceDefinition(StatementInfo Info) : BoundStatement(Info)
{
    /// <summary>How far a score on principle may be off, one standard deviation, in points, above 0; null when not said.</summary>
    public double? PrinciplesMayBeOff { get; init; }

    /// <summary>Points that a difference of one standard deviation is worth, with its doubt; null when not said.</summary>
    public UncertainNumber? StandardDeviationIsWorth { get; init; }

    /// <summary>How far a finding that nobody repeated may be off beside its own doubt, one standard deviation, in points, above 0; null when not said.</summary>
    public double? LoneStudyAdds { get; init; }

    /// <summary>Outcomes that move no placement.</summary>
    public ImmutableArray<string> Ignores { get; init; } = [];

    /// <summary>How alike, 0 to 1, a movement must be to a tested one to be moved with it; null when findings move tested movements only.</summary>
    public double? SpreadsAt { get; init; }

    /// <summary>Whether benchmarks keep their score.</summary>
    public bool FreezesBenchmarks { get; init; }

    /// <summary>Whether studies can be weighed: both doubts are said.</summary>
    public bool CanWeigh => PrinciplesMayBeOff is not null && LoneStudyAdds is not null;
}
