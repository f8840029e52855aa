namespace ScoreRules.Answers.NewStudy;

/// <summary>What a new study could turn.</summary>
public enum StudyEffectKind
{
    /// <summary>Which of the two stands above the other.</summary>
    Order,

    /// <summary>The tier of the first.</summary>
    FirstTier,

    /// <summary>The tier of the second.</summary>
    SecondTier,
}
