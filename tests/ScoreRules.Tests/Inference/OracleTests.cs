using CsCheck;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

/// <summary>The engine, which works on all rows at once, against a plain evaluator that works on one.</summary>
public sealed class OracleTests
{
    private const int Houses = 400;

    [Fact]
    public void Every_statement_has_the_answers_of_the_plain_evaluator_on_every_row() => HouseGen.Houses.Sample(
        house =>
        {
            var inferred = house.Infer();
            foreach (var row in house.Rows)
            {
                var oracle = new Oracle(house, row);
                foreach (var statement in house.Statements)
                {
                    (statement, row.Index, Facts(inferred.Outcome(statement), row.Index)).ShouldBe((statement, row.Index, Facts(oracle, statement)));
                }
            }
        },
        iter: Houses);

    [Fact]
    public void Every_called_fact_and_worked_out_number_is_that_of_the_plain_evaluator() => HouseGen.Houses.Sample(
        house =>
        {
            var inferred = house.Infer();
            foreach (var row in house.Rows)
            {
                var oracle = new Oracle(house, row);
                foreach (var fact in house.Calls.Select(call => call.Fact).Append("nobody's fact"))
                {
                    Answer(inferred.Concept(fact), row.Index).ShouldBe(oracle.Called(fact), fact);
                }

                foreach (var recipe in house.Recipes)
                {
                    inferred.Facts.Numbers(recipe.Result)[row.Index].ShouldBe(oracle.Number(recipe.Result) ?? double.NaN, recipe.Result.Name);
                }
            }
        },
        iter: Houses);

    [Fact]
    public void An_explanation_tells_what_the_plain_evaluator_tells_and_what_decided() => HouseGen.Houses.Sample(
        house =>
        {
            var inferred = house.Infer();
            foreach (var row in house.Rows)
            {
                var oracle = new Oracle(house, row);
                foreach (var condition in house.Statements.Select(HouseCase.ConditionOf))
                {
                    Check(ConditionTrace.Explain(condition, row.Index, inferred), oracle);
                }
            }
        },
        iter: Houses / 4);

    [Fact]
    public void The_order_of_rules_movements_targets_and_rows_changes_nothing() => Gen.Select(HouseGen.Houses, Gen.Int).Sample(
        (house, seed) => Told(house.Shuffled(seed), house).ShouldBe(Told(house, house)),
        iter: Houses / 2);

    [Fact]
    public void Every_rule_fires_once() => HouseGen.Houses.Sample(
        house => house.Infer().Firings.ShouldBe(house.Statements.Count() + house.Recipes.Count + house.Calls.Select(call => call.Fact).Distinct().Count()),
        iter: Houses / 4);

    private static (bool? Holds, bool IsAbout, bool Exempt, bool Overridden, bool Effective, bool CouldNotTell) Facts(RuleOutcome outcome, int row) => (
        Answer(outcome.Condition, row),
        outcome.InScope.Contains(row),
        outcome.Exempt.Contains(row),
        outcome.Overridden.Contains(row),
        outcome.Effective.Contains(row),
        outcome.CouldNotTell.Contains(row));

    private static (bool? Holds, bool IsAbout, bool Exempt, bool Overridden, bool Effective, bool CouldNotTell) Facts(Oracle oracle, BoundStatement statement)
    {
        var condition = HouseCase.ConditionOf(statement);
        var (holds, isAbout) = (oracle.Holds(condition), oracle.IsAbout(statement));
        var acting = statement as ConditionalStatement;
        return (
            holds,
            isAbout,
            oracle.IsExempt(statement, condition),
            acting is not null && oracle.IsOverridden(acting),
            acting is null ? holds == true && isAbout : oracle.HasEffect(acting),
            holds is null && isAbout);
    }

    private static bool? Answer(ThreeValuedSet rows, int row)
    {
        var signs = (rows.Held.Contains(row), rows.DidNotHold.Contains(row), rows.CouldNotTell.Contains(row));
        return signs switch
        {
            (true, false, false) => true,
            (false, true, false) => false,
            (false, false, true) => null,
            _ => throw new InvalidOperationException($"Row {row} has {signs}: not exactly one answer."),
        };
    }

    private static void Check(ConditionTrace trace, Oracle oracle)
    {
        var expected = oracle.Holds(trace.Condition) switch { true => Verdict.Held, false => Verdict.DidNotHold, _ => Verdict.CouldNotTell };
        trace.Verdict.ShouldBe(trace.IsOutOfScope ? Verdict.DidNotHold : expected);
        var decisive = trace.FirstDecisive();
        (decisive is null).ShouldBe(trace.Verdict == Verdict.Held);
        if (decisive is not null)
        {
            decisive.Verdict.ShouldBe(trace.Verdict);
        }

        foreach (var part in trace.Parts)
        {
            Check(part, oracle);
        }
    }

    // Each statement with the movements and targets where it has its effect, or where it cannot be told; in one fixed order.
    private static List<string> Told(HouseCase house, HouseCase inOrder)
    {
        var inferred = house.Infer();
        string Places(IEnumerable<int> rows) => string.Join("; ", rows.Select(row => $"{house.Rows[row].Movement.Name} in {house.Rows[row].Target.Name}").Order(StringComparer.Ordinal));
        var statements = inOrder.Statements.Select(inferred.Outcome).Select((outcome, position) => $"{position}: {Places(outcome.Effective)} | {Places(outcome.CouldNotTell)} | {Places(outcome.Exempt)} | {Places(outcome.Overridden)}");
        var numbers = inOrder.Recipes.SelectMany(recipe => house.Rows.Select(row => $"{recipe.Result.Name}, {row.Movement.Name} in {row.Target.Name}: {inferred.Facts.Numbers(recipe.Result)[row.Index]:R}").Order(StringComparer.Ordinal));
        return [.. statements, .. numbers];
    }
}
