using System.Collections.Immutable;
using ScoreRules.Answers.WhyNot;
using ScoreRules.Explanation;
using ScoreRules.Inference;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>Why a rule did not hold, in words.</summary>
internal static class WhyNotWords
{
    /// <summary>The answer.</summary>
    public static AnswerPage Of(WhyNotAnswer answer) => new(
        answer,
        answer.Findings.IsEmpty ? [TargetWords.NotRanked(answer.Movement)] : [.. answer.Findings.Select(finding => Section(answer, finding))],
        answer.Findings.Any(finding => finding.Found is not null) ? ChangeWords.Notes : []);

    private static AnswerSection Section(WhyNotAnswer answer, WhyNotFinding finding)
    {
        var name = answer.Question.Statement!;
        var lead = finding.Holds ? $"But \"{name}\" does hold for {answer.Movement.Name}." : $"\"{name}\" does not hold for {answer.Movement.Name}.";
        var changes = finding.Found is { } found ? ChangeWords.Lines(found, $"no change of up to three facts makes \"{name}\" hold") : [];
        return new AnswerSection(finding.Explained.Row.Target.Name, lead, [.. finding.Ways.SelectMany(Way), .. changes]);
    }

    private static IEnumerable<AnswerLine> Way(WayFinding way)
    {
        var figures = new FiguresPart { Rule = JsonParts.Rule(way.Statement.Info) };
        var place = $"({way.Statement.Info.Location})";
        if (way.Effect == RuleEffect.Held)
        {
            return [AnswerLine.Of("Holds", $"because of {TraceText.Held(way.Trace)} {place}", figures), .. ChainText.Of(way.Trace)];
        }

        if (way.Effect is RuleEffect.Exempt or RuleEffect.Overridden || !way.IsInScope)
        {
            return [AnswerLine.Of("Does not act", way.Effect switch { RuleEffect.Exempt => $"this movement or target is excepted {place}", RuleEffect.Overridden => $"another rule overrides it here {place}", _ => $"it is not about this movement or target {place}" }, figures)];
        }

        return way.Failed.SelectMany((part, at) => Failed(part, at == 0, place, figures));
    }

    // A called fact that failed is followed down to what it lacks.
    private static IEnumerable<AnswerLine> Failed(ConditionTrace part, bool isFirst, string place, FiguresPart figures)
    {
        yield return AnswerLine.Of(isFirst ? "Fails at" : "Also", $"{TraceText.Asked(part)}{(isFirst ? " " + place : "")}", figures);
        foreach (var line in Below(part, 1))
        {
            yield return line;
        }
    }

    private static IEnumerable<AnswerLine> Below(ConditionTrace part, int depth) => part.Condition is not Language.Binding.CalledTest ? [] :
        part.Parts.Where(way => !way.IsOutOfScope).SelectMany(way => way.Condition is Language.Binding.AllOf ? way.Parts : ImmutableArray.Create(way)).Where(inner => inner.Verdict != Verdict.Held)
            .SelectMany(inner => Below(inner, depth + 1).Prepend(AnswerLine.Behind(TraceText.Asked(inner), depth)));
}
