using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Why a condition held, did not hold or could not be told for one row: part by part, with the facts found.</summary>
public sealed class ConditionTrace
{
    private readonly InferenceResult inferred;
    private readonly int row;
    private ImmutableArray<ConditionTrace>? parts;
    private Verdict? verdict;

    private ConditionTrace(Condition condition, int row, InferenceResult inferred, CallDefinition? call)
    {
        Condition = condition;
        this.row = row;
        this.inferred = inferred;
        Call = call;
        IsOutOfScope = call is not null && !inferred.Outcome(call).InScope.Contains(row);
    }

    /// <summary>The condition, or the part of one.</summary>
    public Condition Condition { get; }

    /// <summary>What became of it. Found when first asked for.</summary>
    public Verdict Verdict => verdict ??= IsOutOfScope ? Verdict.DidNotHold : Decide();

    /// <summary>For a part that is a way in to a called fact: the statement; else null.</summary>
    public CallDefinition? Call { get; }

    /// <summary>Whether it is a way in to a called fact that is not about this movement or target, so that it does not hold whatever its condition says.</summary>
    public bool IsOutOfScope { get; }

    /// <summary>Its parts in source order; for a called fact the conditions of the statements that make it. Made when first asked for.</summary>
    public ImmutableArray<ConditionTrace> Parts => parts ??= [.. PartsOf(Condition)];

    /// <summary>For a test of an attribute, or one behind <c>unless</c>: the attribute; else null.</summary>
    public AttributeDefinition? Attribute => Condition switch
    {
        AttributeTest test => test.Attribute,
        Unless { Part: AttributeTest test } => test.Attribute,
        _ => null,
    };

    /// <summary>The fact found for <see cref="Attribute"/>; null without one.</summary>
    public CatalogueFact? Fact => Attribute is { } attribute ? inferred.Facts.Fact(row, attribute) : null;

    /// <summary>Explains a condition for a row.</summary>
    /// <param name="condition">A condition of the ruleset that was applied.</param>
    /// <param name="row">Position of the row.</param>
    /// <param name="inferred">What was found.</param>
    public static ConditionTrace Explain(Condition condition, int row, InferenceResult inferred) => new(condition, row, inferred, null);

    /// <summary>
    /// The first part in source order that decided against, or that could not be told; null when the condition held. A part
    /// that could not be told is followed down to the unknown fact; one that decided against is a test, a called fact or an
    /// <c>unless</c> as the author wrote it.
    /// </summary>
    public ConditionTrace? FirstDecisive()
    {
        if (Verdict == Verdict.Held)
        {
            return null;
        }

        var goesDown = Verdict == Verdict.CouldNotTell || (!IsOutOfScope && Condition is AllOf or AnyOf);
        return goesDown ? Parts.FirstOrDefault(part => part.Verdict == Verdict)?.FirstDecisive() ?? this : this;
    }

    // Tests are answered for all rows already; what joins them is decided here from the parts, for this row alone.
    private Verdict Decide() => Condition switch
    {
        AllOf => Parts.Any(part => part.Verdict == Verdict.DidNotHold) ? Verdict.DidNotHold : Undecided(Verdict.Held),
        AnyOf => Parts.Any(part => part.Verdict == Verdict.Held) ? Verdict.Held : Undecided(Verdict.DidNotHold),
        Unless => Parts[0].Verdict switch
        {
            Verdict.Held => Verdict.DidNotHold,
            Verdict.DidNotHold => Verdict.Held,
            _ => Verdict.CouldNotTell,
        },
        _ => inferred.VerdictOf(Condition, row),
    };

    private Verdict Undecided(Verdict otherwise) => Parts.Any(part => part.Verdict == Verdict.CouldNotTell) ? Verdict.CouldNotTell : otherwise;

    private IEnumerable<ConditionTrace> PartsOf(Condition condition) => condition switch
    {
        AllOf all => all.Parts.Select(part => Explain(part, row, inferred)),
        AnyOf any => any.Parts.Select(part => Explain(part, row, inferred)),
        Unless unless => [Explain(unless.Part, row, inferred)],
        CalledTest called => inferred.CallsOf(called.Fact).Select(call => new ConditionTrace(call.Condition, row, inferred, call)),
        _ => [],
    };
}
