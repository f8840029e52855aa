using System.Collections.Immutable;

namespace ScoreRules.Language;

/// <summary>How each kind of question is asked, for help and messages. Words in capitals stand for names.</summary>
public static class QuestionForms
{
    /// <summary>The forms, in the order of <see cref="QuestionKind"/>, without the word <c>ask</c>.</summary>
    public static ImmutableArray<(QuestionKind Kind, string Form)> All { get; } =
    [
        (QuestionKind.Why, "why MOVEMENT is above MOVEMENT"),
        (QuestionKind.WhyNot, "why not RULE for MOVEMENT"),
        (QuestionKind.HowFirmly, "how firmly MOVEMENT is above MOVEMENT"),
        (QuestionKind.WhatLifts, "what lifts MOVEMENT to TIER"),
        (QuestionKind.WhatIsLost, "what is lost without KIT, KIT"),
        (QuestionKind.WhatToBuy, "what to buy for TARGET"),
        (QuestionKind.WhatIsForgotten, "what is forgotten for TARGET"),
        (QuestionKind.WhatIsMisplaced, "what is misplaced for TARGET"),
        (QuestionKind.SoreJoint, "what a sore JOINT costs for TARGET"),
        (QuestionKind.WhatIsShaky, "what is shaky for TARGET"),
        (QuestionKind.WhereIsShaky, "where MOVEMENT is shaky"),
        (QuestionKind.WhatRestsOn, "what rests on RULE"),
    ];
}
