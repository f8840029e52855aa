using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>A condition for one row, part by part, with the values found.</summary>
/// <param name="Condition">The condition or part.</param>
/// <param name="Verdict">Whether it holds there.</param>
/// <param name="Attribute">For a comparison: the attribute compared.</param>
/// <param name="Fact">For a comparison: the fact found.</param>
/// <param name="Parts">Parts in source order.</param>
public sealed record ConditionTrace(Condition Condition, Verdict Verdict, AttributeDefinition? Attribute, CatalogueFact? Fact, ImmutableArray<ConditionTrace> Parts)
{
    /// <summary>Traces a condition for one row; read from the columns on demand.</summary>
    public static ConditionTrace Explain(Condition condition, int row, InferenceResult inferred) => condition switch
    {
        AllOf all => Joined(all, all.Parts, row, inferred, Verdict.DidNotHold, Verdict.Held),
        AnyOf any => Joined(any, any.Parts, row, inferred, Verdict.Held, Verdict.DidNotHold),
        Unless unless => Opposite(unless, Explain(unless.Part, row, inferred)),
        CalledTest called => new ConditionTrace(called, inferred.Concept(called.Fact).VerdictOf(row), null, null, []),
        AttributeTest test => new ConditionTrace(test, Compare(test, row, inferred), test.Attribute, inferred.Facts.Fact(row, test.Attribute), []),
        _ => new ConditionTrace(condition, Verdict.Held, null, null, []),
    };

    /// <summary>The first part, in source order, that decided the verdict.</summary>
    public ConditionTrace FirstDecisive()
    {
        if (Parts.IsEmpty)
        {
            return this;
        }

        var wanted = Condition is Unless ? Parts[0].Verdict : Verdict;
        return (Parts.FirstOrDefault(part => part.Verdict == wanted) ?? Parts[0]).FirstDecisive();
    }

    private static ConditionTrace Joined(Condition condition, ImmutableArray<Condition> parts, int row, InferenceResult inferred, Verdict deciding, Verdict otherwise)
    {
        var traces = parts.Select(part => Explain(part, row, inferred)).ToImmutableArray();
        var verdict = traces.Any(trace => trace.Verdict == deciding) ? deciding
            : traces.Any(trace => trace.Verdict == Verdict.CouldNotTell) ? Verdict.CouldNotTell
            : otherwise;
        return new ConditionTrace(condition, verdict, null, null, traces);
    }

    private static ConditionTrace Opposite(Condition condition, ConditionTrace part)
    {
        var verdict = part.Verdict switch { Verdict.Held => Verdict.DidNotHold, Verdict.DidNotHold => Verdict.Held, var same => same };
        return new ConditionTrace(condition, verdict, null, null, [part]);
    }

    private static Verdict Compare(AttributeTest test, int row, InferenceResult inferred)
    {
        var value = inferred.Facts.Fact(row, test.Attribute).Value;
        if (test.Comparison is Comparison.Known or Comparison.Unknown)
        {
            return value.IsKnown == (test.Comparison == Comparison.Known) ? Verdict.Held : Verdict.DidNotHold;
        }

        return !value.IsKnown ? Verdict.CouldNotTell
            : (test.Attribute.IsWord ? Words(test, value) : Number(test, value.Number)) ? Verdict.Held
            : Verdict.DidNotHold;
    }

    private static bool Words(AttributeTest test, FactValue value) => test.Comparison switch
    {
        Comparison.OtherThan or Comparison.NoneOf or Comparison.HasNone => !test.Codes.Any(code => value.Codes.Contains(code)),
        Comparison.HasAll => test.Codes.All(code => value.Codes.Contains(code)),
        _ => test.Codes.Any(code => value.Codes.Contains(code)),
    };

    private static bool Number(AttributeTest test, double number)
    {
        var (value, low, high) = (Math.Round(number, 9, MidpointRounding.AwayFromZero), Math.Round(test.Number, 9, MidpointRounding.AwayFromZero), Math.Round(test.High, 9, MidpointRounding.AwayFromZero));
        return test.Comparison switch
        {
            Comparison.Is => value == low,
            Comparison.OtherThan => value != low,
            Comparison.AtLeast => value >= low,
            Comparison.AtMost => value <= low,
            Comparison.MoreThan => value > low,
            Comparison.LessThan => value < low,
            _ => value >= low && value <= high,
        };
    }
}
