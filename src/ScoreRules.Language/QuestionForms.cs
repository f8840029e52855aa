using System.Collections.Immutable;

namespace ScoreRules.Language;

/// <summary>How each kind of question is asked, for help and messages. Words in capitals stand for names; "for TARGET" and "to TIER" may be left out.</summary>
public static class QuestionForms
{
    /// <summary>The forms, in the order of <see cref="QuestionKind"/>, without the word <c>ask</c>.</summary>
    public static ImmutableArray<(QuestionKind Kind, string Form)> All { get; } =
    [
        (QuestionKind.Why, "why MOVEMENT is above MOVEMENT for TARGET"),
        (QuestionKind.WhyNot, "why not RULE for MOVEMENT"),
        (QuestionKind.HowFirmly, "how firmly MOVEMENT is above MOVEMENT for TARGET"),
        (QuestionKind.WhatLifts, "what lifts MOVEMENT to TIER for TARGET"),
        (QuestionKind.WhatIsLost, "what is lost without KIT, KIT for TARGET"),
        (QuestionKind.WhatToBuy, "what to buy for TARGET"),
        (QuestionKind.WhatIsForgotten, "what is forgotten for TARGET"),
        (QuestionKind.WhatIsMisplaced, "what is misplaced for TARGET"),
        (QuestionKind.SoreJoint, "what a sore JOINT costs for TARGET"),
        (QuestionKind.WhatIsShaky, "what is shaky for TARGET"),
        (QuestionKind.WhereIsShaky, "where MOVEMENT is shaky"),
        (QuestionKind.WhatRestsOn, "what rests on RULE"),
        (QuestionKind.NewStudy, "what a study of MOVEMENT against MOVEMENT would change for TARGET"),
    ];
}
