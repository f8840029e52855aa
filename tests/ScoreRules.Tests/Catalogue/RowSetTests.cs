using CsCheck;
using ScoreRules.Catalogue;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

public sealed class RowSetTests
{
    private static readonly Gen<(int Size, HashSet<int> Left, HashSet<int> Right)> Pairs =
        Gen.Int[1, 200].SelectMany(size => Gen.Select(Gen.Const(size), Gen.Int[0, size - 1].Array[0, size].Select(all => all.ToHashSet()), Gen.Int[0, size - 1].Array[0, size].Select(all => all.ToHashSet())));

    [Fact]
    public void Joining_sets_of_rows_agrees_with_sets_of_numbers() => Pairs.Sample(pair =>
    {
        var (size, left, right) = pair;
        var (a, b) = (RowSet.Of(size, left), RowSet.Of(size, right));
        a.And(b).ShouldBe(left.Intersect(right).Order());
        a.Or(b).ShouldBe(left.Union(right).Order());
        a.AndNot(b).ShouldBe(left.Except(right).Order());
        a.Not().ShouldBe(Enumerable.Range(0, size).Except(left));
        a.Count.ShouldBe(left.Count);
        a.IsEmpty.ShouldBe(left.Count == 0);
        a.IsSubsetOf(b).ShouldBe(left.IsSubsetOf(right));
        a.Equals(b).ShouldBe(left.SetEquals(right));
    });

    [Fact]
    public void Sets_of_the_same_rows_are_equal_however_they_were_made() => Pairs.Sample(pair =>
    {
        var (a, b) = (RowSet.Of(pair.Size, pair.Left), RowSet.Of(pair.Size, pair.Right));
        var other = a.AndNot(b).Or(a.And(b));
        other.Equals((object)a).ShouldBeTrue();
        other.GetHashCode().ShouldBe(a.GetHashCode());
    });

    [Fact]
    public void Joining_with_all_rows_or_none_agrees_with_the_same_sets_made_row_by_row() => Pairs.Sample(pair =>
    {
        var size = pair.Size;
        RowSet[] quick = [RowSet.All(size), RowSet.None(size), RowSet.Of(size, pair.Left)];
        RowSet[] plain = [RowSet.Of(size, Enumerable.Range(0, size)), RowSet.Of(size, []), RowSet.Of(size, pair.Left)];
        for (var i = 0; i < 9; i++)
        {
            var (left, right) = (quick[i / 3], quick[i % 3]);
            var (plainLeft, plainRight) = (plain[i / 3], plain[i % 3]);
            left.And(right).Equals(plainLeft.And(plainRight)).ShouldBeTrue();
            left.Or(right).Equals(plainLeft.Or(plainRight)).ShouldBeTrue();
            left.AndNot(right).Equals(plainLeft.AndNot(plainRight)).ShouldBeTrue();
        }
    });

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(63)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(128)]
    public void All_rows_are_as_many_as_there_are(int size)
    {
        RowSet.All(size).Count.ShouldBe(size);
        RowSet.None(size).Not().ShouldBe(RowSet.All(size));
        RowSet.All(size).Not().IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void Rows_that_are_not_there_are_in_no_set()
    {
        RowSet.All(65).Contains(-1).ShouldBeFalse();
        RowSet.All(65).Contains(64).ShouldBeTrue();
        RowSet.All(65).Contains(65).ShouldBeFalse();
    }

    [Fact]
    public void A_row_that_is_not_there_cannot_be_put_in() => Should.Throw<ArgumentOutOfRangeException>(() => RowSet.Of(3, [3]));

    [Fact]
    public void Sets_over_other_numbers_of_rows_cannot_be_joined()
    {
        Should.Throw<ArgumentException>(() => RowSet.All(64).And(RowSet.All(65))).Message.ShouldStartWith("A set over 64 rows cannot be joined with one over 65.");
        Should.Throw<ArgumentException>(() => RowSet.All(64).Or(RowSet.All(65)));
        Should.Throw<ArgumentException>(() => RowSet.All(64).AndNot(RowSet.None(65)));
        Should.Throw<ArgumentException>(() => RowSet.All(64).IsSubsetOf(RowSet.All(65)));
    }

    [Fact]
    public void Sets_over_other_numbers_of_rows_differ() => RowSet.None(3).Equals(RowSet.None(4)).ShouldBeFalse();

    [Fact]
    public void A_set_prints_its_rows() => RowSet.Of(7, [4, 0, 3]).ToString().ShouldBe("0, 3, 4 of 7");
}
