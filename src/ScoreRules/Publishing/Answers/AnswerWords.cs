using ScoreRules.Answers;
using ScoreRules.Answers.Firmness;
using ScoreRules.Answers.Lift;
using ScoreRules.Answers.Order;
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
        _ => throw new InvalidOperationException($"Answers of the kind {answer.GetType().Name} cannot be worded."),
    };
}
