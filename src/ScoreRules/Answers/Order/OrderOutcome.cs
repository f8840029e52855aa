namespace ScoreRules.Answers.Order;

/// <summary>How two movements stand to one another in a target.</summary>
public enum OrderOutcome
{
    /// <summary>The first stands above the second.</summary>
    Above,

    /// <summary>The first stands below the second.</summary>
    Below,

    /// <summary>They share a rank.</summary>
    Level,

    /// <summary>At least one of them is left out, so that there is no order.</summary>
    NoOrder,
}
