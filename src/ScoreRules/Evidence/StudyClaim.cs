using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Statistics.Beliefs;

namespace ScoreRules.Evidence;

/// <summary>What a study says of two sides in one target, in points.</summary>
/// <param name="Study">The study.</param>
/// <param name="First">The side spoken of first: a movement, or a class.</param>
/// <param name="Second">The other side.</param>
/// <param name="Sense">How it speaks.</param>
/// <param name="Low">The least difference of first less second; minus infinity when none is told.</param>
/// <param name="High">The largest; infinity when none is told.</param>
public sealed record StudyClaim(StudyDefinition Study, string First, string Second, StudySense Sense, double Low, double High)
{
    /// <summary>The lines behind it.</summary>
    public ImmutableArray<StudyFinding> Lines { get; init; } = [];

    /// <summary>What it speaks of: places among the rows of the target, with factors that sum to 0.</summary>
    public ImmutableArray<ScoreTerm> Terms { get; init; } = [];

    /// <summary>How far it may be off, one standard deviation, in points: its own doubt and that between studies, less trust and what it did not measure.</summary>
    public double Deviation { get; init; }

    /// <summary>The doubt that is added because nobody repeated it, or because those who did differ, one standard deviation in points.</summary>
    public double BetweenStudies { get; init; }

    /// <summary>How many studies measured the same two in the same way, itself included.</summary>
    public int Repeats { get; init; } = 1;

    /// <summary>Which share of the target's muscles it measured, above 0 to 1.</summary>
    public double Covered { get; init; } = 1;

    /// <summary>Whether regions went opposite ways, so that the least differences of both stand for them.</summary>
    public bool IsSplit { get; init; }

    /// <summary>1 when it speaks for the first side, -1 for the second, 0 when it found no difference.</summary>
    public int Direction => Sense == StudySense.Within ? 0 : double.IsFinite(Low) && (Sense == StudySense.AtLeast || Low >= 0) ? 1 : -1;

    /// <summary>Whether it speaks of a movement itself.</summary>
    /// <param name="place">Place among the rows of the target.</param>
    public bool Tests(int place) => Terms.Any(term => term.Score == place);
}
