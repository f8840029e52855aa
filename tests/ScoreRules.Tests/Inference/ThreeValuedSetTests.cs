using ScoreRules.Catalogue;
using ScoreRules.Inference;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

/// <summary>Strong Kleene logic; the tables are those of S. C. Kleene, Introduction to Metamathematics (1952), section 64.</summary>
public sealed class ThreeValuedSetTests
{
    // Nine rows: every pair of held, could not tell, did not hold.
    private static readonly ThreeValuedSet Left = Set("+++???---");
    private static readonly ThreeValuedSet Right = Set("+?-+?-+?-");

    [Fact]
    public void And_is_false_when_one_side_is_false_and_else_as_doubtful_as_its_parts() =>
        Scene.Signs(Left.And(Right)).ShouldBe("+?-??----");

    [Fact]
    public void Or_is_true_when_one_side_is_true_and_else_as_doubtful_as_its_parts() =>
        Scene.Signs(Left.Or(Right)).ShouldBe("++++??+?-");

    [Fact]
    public void Not_keeps_doubt() => Scene.Signs(Left.Not()).ShouldBe("---???+++");

    [Fact]
    public void Outside_its_scope_nothing_holds() =>
        Scene.Signs(Left.Within(RowSet.Of(9, [0, 3, 6]))).ShouldBe("+--?-----");

    [Fact]
    public void The_three_answers_are_disjoint_and_cover_every_row()
    {
        Left.Held.ShouldBe(RowSet.Of(9, [0, 1, 2]));
        Left.CouldNotTell.ShouldBe(RowSet.Of(9, [3, 4, 5]));
        Left.DidNotHold.ShouldBe(RowSet.Of(9, [6, 7, 8]));
    }

    [Fact]
    public void What_is_certain_must_be_possible() =>
        Should.Throw<ArgumentException>(() => new ThreeValuedSet(RowSet.All(3), RowSet.None(3)));

    [Fact]
    public void Sets_with_the_same_answers_are_equal() => Set("+?-").ShouldBe(Set("+?-"));

    [Fact]
    public void Sets_with_other_answers_differ() => Set("+?-").ShouldNotBe(Set("+--"));

    private static ThreeValuedSet Set(string signs) => new(
        RowSet.Of(signs.Length, Enumerable.Range(0, signs.Length).Where(row => signs[row] == '+')),
        RowSet.Of(signs.Length, Enumerable.Range(0, signs.Length).Where(row => signs[row] != '-')));
}
