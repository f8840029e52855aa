using CsCheck;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

/// <summary>The engine, set-at-a-time, against the same rules with one fact and one firing for each row (small houses).</summary>
public sealed class TupleSessionTests
{
    [Fact]
    public void Tuple_at_a_time_finds_the_same_rows_for_every_statement() => HouseGen.Houses.Sample(
        house =>
        {
            var inferred = house.Infer();
            var tuples = new TupleSession(house).Run();
            foreach (var statement in house.Statements)
            {
                tuples[(statement, true)].Distinct().Order().ShouldBe(inferred.Outcome(statement).Condition.Certain);
                tuples[(statement, false)].Distinct().Order().ShouldBe(inferred.Outcome(statement).Condition.Possible);
            }
        },
        iter: 30);
}
