namespace ScoreRules.Statistics.Beliefs;

/// <summary>How a study speaks of a difference.</summary>
public enum ObservationKind
{
    /// <summary>It measured the difference: a belief on either side of it moves towards it.</summary>
    Measured,

    /// <summary>It shows a difference of at least so much: a belief that falls short moves up, one beyond it stays.</summary>
    AtLeast,
}
