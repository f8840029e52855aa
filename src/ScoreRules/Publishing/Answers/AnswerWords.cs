using ScoreRules.Answers;
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

namespace ScoreRules.Publishing.Answers;

/// <summary>Words answers.</summary>
internal static class AnswerWords
{
    /// <summary>An answer in words.</summary>
    public static AnswerPage Of(Answer answer) => answer switch
    {
        OrderAnswer order => OrderWords.Of(order),
        WhyNotAnswer whyNot => WhyNotWords.Of(whyNot),
        FirmnessAnswer firmness => FirmnessWords.Of(firmness),
        LiftAnswer lift => LiftWords.Of(lift),
        LossAnswer loss => LossWords.Of(loss),
        PurchaseAnswer purchase => PurchaseWords.Of(purchase),
        SoreAnswer sore => SoreWords.Of(sore),
        GapAnswer gaps => GapWords.Of(gaps),
        AuditAnswer audit => AuditWords.Of(audit),
        NewStudyAnswer study => NewStudyWords.Of(study),
        BeliefAnswer beliefs => BeliefWords.Of(beliefs),
        _ => throw new InvalidOperationException($"Answers of the kind {answer.GetType().Name} cannot be worded."),
    };
}
