using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Evidence;

/// <summary>How a movement's score came from principle to what is ranked. The parts sum to the difference.</summary>
/// <param name="Principle">Points on principle.</param>
/// <param name="Score">Points after evidence.</param>
public sealed record RowEvidence(double Principle, double Score)
{
    /// <summary>The personal judgement that sets it by another movement, or null.</summary>
    public PlaceDefinition? Place { get; init; }

    /// <summary>Points that the judgement moved it.</summary>
    public double PlacePoints { get; init; }

    /// <summary>What weighed studies did, by study.</summary>
    public ImmutableArray<StudyPull> Pulls { get; init; } = [];

    /// <summary>What keeping a tested order did, by study.</summary>
    public ImmutableArray<StudyPull> Held { get; init; } = [];

    /// <summary>How far the score may still be off, one standard deviation in points; NaN when the house does not say how far its principles may be.</summary>
    public double Deviation { get; init; } = double.NaN;

    /// <summary>Whether a study that counts speaks of it.</summary>
    public bool IsTested { get; init; }

    /// <summary>All points that evidence and judgement moved it.</summary>
    public double Moved => Score - Principle;

    /// <summary>Points that studies moved it: its own and those of its cousins.</summary>
    public double ByStudies => Pulls.Sum(pull => pull.Points) + Held.Sum(pull => pull.Points);
}
