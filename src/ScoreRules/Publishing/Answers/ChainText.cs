using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>The chain of called facts behind a condition that holds: each with what made it, down to given facts.</summary>
internal static class ChainText
{
    /// <summary>One line for each called fact, what it rests on set in below it.</summary>
    public static IEnumerable<AnswerLine> Of(ConditionTrace trace, int depth = 1) =>
        trace.Condition is CalledTest called ? Called(called.Fact, trace, depth) : trace.Parts.Where(part => part.Verdict == Verdict.Held && trace.Condition is not Unless).SelectMany(part => Of(part, depth));

    private static IEnumerable<AnswerLine> Called(string fact, ConditionTrace trace, int depth)
    {
        foreach (var way in trace.Parts.Where(part => part.Verdict == Verdict.Held).Take(1))
        {
            yield return AnswerLine.Behind($"{fact}, because of {TraceText.Held(way)}", depth, new FiguresPart { Rule = JsonParts.Rule(way.Call!.Info) });
            foreach (var below in Of(way, depth + 1))
            {
                yield return below;
            }
        }
    }
}
