using CsCheck;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

public sealed class LikenessTests
{
    private static readonly Likeness Likeness = new(SmallHouse.Attributes);

    private static readonly Gen<Movement> AnyMovement = Gen.Select(Gen.Int[-1, 4], Gen.Int[-20, 90], Gen.Int[-1, 2], Gen.Int[-1, 15], Gen.Int[-181, 180])
        .Select((stretch, setUp, grip, muscles, angle) => Make(
            ("stretch", stretch < 0 ? FactValue.Unknown : FactValue.Of(stretch)),
            ("set-up", setUp < -10 ? FactValue.Unknown : FactValue.Of(setUp)),
            ("grip", grip < 0 ? FactValue.Unknown : FactValue.Of([grip])),
            ("prime mover", muscles < 0 ? FactValue.Unknown : FactValue.Of([.. Enumerable.Range(0, 4).Where(bit => (muscles & (1 << bit)) != 0)])),
            ("bench angle", angle < -180 ? FactValue.Unknown : FactValue.Of(angle))));

    [Theory]
    [InlineData("stretch", 1, 3, 0.5)]
    [InlineData("stretch", 4, 0, 1)]
    [InlineData("bench angle", -30, 60, 0.5)]
    [InlineData("bench angle", -100, 135, 1)]
    [InlineData("set-up", 20, 40, 0.5)]
    [InlineData("set-up", 0, 0, 0)]
    [InlineData("set-up", -20, 20, 1)]
    [InlineData("set-up", 0, 5, 1)]
    public void Numbers_differ_by_their_share_of_the_scale(string attribute, double left, double right, double distance)
    {
        Between(attribute, FactValue.Of(left), FactValue.Of(right)).ShouldBe(Math.Exp(-6 * distance), 1e-12);
    }

    [Theory]
    [InlineData("", "", 0)]
    [InlineData("0", "", 1)]
    [InlineData("0", "1", 1)]
    [InlineData("01", "12", 2.0 / 3)]
    [InlineData("012", "12", 1.0 / 3)]
    [InlineData("012", "012", 0)]
    public void Lists_differ_by_the_share_of_words_that_only_one_has(string left, string right, double distance)
    {
        Between("prime mover", Codes(left), Codes(right)).ShouldBe(Math.Exp(-6 * distance), 1e-12);
    }

    [Fact]
    public void Single_words_are_the_same_or_wholly_different()
    {
        Between("grip", FactValue.Of([1]), FactValue.Of([1])).ShouldBe(1);
        Between("grip", FactValue.Of([1]), FactValue.Of([2])).ShouldBe(Math.Exp(-6), 1e-12);
    }

    [Fact]
    public void The_distance_is_the_mean_over_the_attributes_that_count()
    {
        var left = Make(("stretch", FactValue.Of(1)), ("grip", FactValue.Of([0])), ("smallest step", FactValue.Of(1)));
        var right = Make(("stretch", FactValue.Of(3)), ("grip", FactValue.Of([0])), ("smallest step", FactValue.Of(20)));
        Likeness.Between(left, right).ShouldBe(Math.Exp(-6 * 0.25), 1e-12);
    }

    [Fact]
    public void What_one_side_does_not_know_is_left_aside_and_named()
    {
        var left = Make(("stretch", FactValue.Of(1)), ("grip", FactValue.Of([0])));
        var right = Make(("stretch", FactValue.Of(1)), ("set-up", FactValue.Of(30)));
        Likeness.Between(left, right).ShouldBe(1);
        Likeness.Skipped(left, right).ShouldBe(["set-up", "grip", "prime mover", "bench angle"]);
    }

    [Fact]
    public void Likeness_is_not_known_when_nothing_can_be_compared()
    {
        Likeness.Between(Make(("stretch", FactValue.Of(1))), Make(("grip", FactValue.Of([0])))).ShouldBe(double.NaN);
    }

    [Fact]
    public void Likeness_is_the_same_in_both_directions_and_lies_between_0_and_1()
    {
        Gen.Select(AnyMovement, AnyMovement).Sample((left, right) =>
        {
            var likeness = Likeness.Between(left, right);
            likeness.ShouldBe(Likeness.Between(right, left));
            (double.IsNaN(likeness) || likeness is > 0 and <= 1).ShouldBeTrue();
            double.IsNaN(likeness).ShouldBe(Likeness.Skipped(left, right).Length == 5);
        });
    }

    [Fact]
    public void A_movement_of_which_anything_is_known_is_wholly_like_itself()
    {
        AnyMovement.Where(movement => Likeness.Skipped(movement, movement).Length < 5).Sample(movement => Likeness.Between(movement, movement).ShouldBe(1));
    }

    private static double Between(string attribute, FactValue left, FactValue right) => Likeness.Between(Make((attribute, left)), Make((attribute, right)));

    private static FactValue Codes(string digits) => FactValue.Of([.. digits.Select(digit => digit - '0')]);

    private static Movement Make(params (string Attribute, FactValue Value)[] facts)
    {
        var all = Enumerable.Repeat(CatalogueFact.NotSaid, SmallHouse.Attributes.Length).ToArray();
        foreach (var (attribute, value) in facts)
        {
            all[SmallHouse.Attribute(attribute).Index] = new CatalogueFact(value, FactOrigin.Stated, null, null);
        }

        return new Movement("any", 0, [], [], [.. all], null, SmallHouse.Targets[0].Info.Location);
    }
}
