namespace ScoreRules.Language;

/// <summary>Kinds of question to a ranking.</summary>
public enum QuestionKind
{
    /// <summary>Why one movement stands above another.</summary>
    Why,

    /// <summary>Why a rule or a called fact does not hold for a movement.</summary>
    WhyNot,

    /// <summary>How small a change of one weight would put one movement level with another.</summary>
    HowFirmly,

    /// <summary>What would lift a movement to a better tier.</summary>
    WhatLifts,

    /// <summary>What is lost without kit.</summary>
    WhatIsLost,

    /// <summary>Which kit to buy next.</summary>
    WhatToBuy,

    /// <summary>Which movements, one fact away from those there are, the catalogue does not hold.</summary>
    WhatIsForgotten,

    /// <summary>Which placements contradict others.</summary>
    WhatIsMisplaced,

    /// <summary>What setting aside movements that load a sore joint costs.</summary>
    SoreJoint,

    /// <summary>Which placements rest on one statement that is not said to be sure.</summary>
    WhatIsShaky,

    /// <summary>On which statements the tier of one movement rests.</summary>
    WhereIsShaky,

    /// <summary>Which placements rest on one statement.</summary>
    WhatRestsOn,

    /// <summary>What a new study of two movements would change, and what result it would need.</summary>
    NewStudy,
}
