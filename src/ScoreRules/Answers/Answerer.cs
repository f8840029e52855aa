using System.Collections.Frozen;
using System.Collections.Immutable;
using ScoreRules.Answers.Audit;
using ScoreRules.Answers.Beliefs;
using ScoreRules.Answers.Firmness;
using ScoreRules.Answers.Gaps;
using ScoreRules.Answers.Kit;
using ScoreRules.Answers.Lift;
using ScoreRules.Answers.NewStudy;
using ScoreRules.Answers.Order;
using ScoreRules.Answers.Sore;
using ScoreRules.Answers.WhyNot;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers;

/// <summary>Answers questions by computation: every answer comes from the judged house or from judging it again.</summary>
public static class Answerer
{
    private static readonly FrozenDictionary<QuestionKind, Func<AskedHouse, Answer>> Finders = new Dictionary<QuestionKind, Func<AskedHouse, Answer>>
    {
        [QuestionKind.Why] = OrderFinder.Find,
        [QuestionKind.WhyNot] = WhyNotFinder.Find,
        [QuestionKind.HowFirmly] = FirmnessFinder.Find,
        [QuestionKind.WhatLifts] = LiftFinder.Find,
        [QuestionKind.WhatIsLost] = LossFinder.Find,
        [QuestionKind.WhatToBuy] = PurchaseFinder.Find,
        [QuestionKind.SoreJoint] = SoreFinder.Find,
        [QuestionKind.WhatIsForgotten] = GapFinder.Find,
        [QuestionKind.WhatIsMisplaced] = AuditFinder.Find,
        [QuestionKind.WhatIsShaky] = BeliefFinder.Shaky,
        [QuestionKind.WhereIsShaky] = BeliefFinder.Where,
        [QuestionKind.WhatRestsOn] = BeliefFinder.On,
        [QuestionKind.NewStudy] = NewStudyFinder.Find,
    }.ToFrozenDictionary();

    /// <summary>The answer to a question.</summary>
    /// <param name="judgement">The house, judged without errors.</param>
    /// <param name="question">One of its questions.</param>
    /// <param name="rankings">The rankings to answer for; those that the question does not name are left aside.</param>
    public static Answer Answer(Judgement judgement, QuestionDefinition question, IEnumerable<TargetRanking> rankings)
    {
        ImmutableArray<TargetRanking> asked = [.. rankings.Where(ranking => question.Targets.IsEmpty || question.Targets.Any(target => target.Index == ranking.Target.Index))];
        return Finders[question.Kind](new AskedHouse(judgement, question, asked));
    }
}
