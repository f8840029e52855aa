namespace ScoreRules.Language.Binding;

/// <summary>Where a caution is shown.</summary>
public enum CautionPlace
{
    /// <summary>Above the ranking, before any result.</summary>
    AboveTheRanking,

    /// <summary>Beside the movement's name.</summary>
    BesideTheName,

    /// <summary>On the movement's card.</summary>
    OnTheCard,

    /// <summary>At the foot of the page.</summary>
    AtTheFoot,
}
