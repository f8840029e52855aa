using ScoreRules.Guarding.Exercising;
using ScoreRules.Publishing.Guards;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Guarding.Exercising;

public sealed class RuleCoverageTests
{
    private const string More = """
        call long
          when load is at least 3

        never above Middle
          named cap
          when long and posture is standing

        leave out
          named off
          when load is 0


        """;

    [Theory]
    [InlineData("", "")]
    [InlineData("expect seated raise is in High", "load steady sits long")]
    [InlineData("expect heavy raise is in Middle", "load steady long cap")]
    [InlineData("expect seated raise is above heavy raise", "load steady long sits cap")]
    [InlineData("expect light raise is left out by off", "off")]
    [InlineData("expect heavy raise is called long", "long")]
    [InlineData("expect plain raise is other than long", "")]
    [InlineData("expect calves has at least 1 in High", "")]
    public void A_rule_is_exercised_where_it_has_its_effect_on_a_placement_that_an_expectation_rests_on(string expectation, string exercised)
    {
        var rules = RuleCoverage.Of(CalfHouse.Judged(more: More + expectation));
        rules.Where(rule => !rule.By.IsEmpty).Select(rule => rule.Statement.Info.Name).Order(StringComparer.Ordinal)
            .ShouldBe(exercised.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_text_counts_each_kind_and_names_what_is_left_with_an_example()
    {
        var text = CoverageText.Print(RuleCoverage.Of(CalfHouse.Judged(more: More + "expect heavy raise is in Middle")));
        text.ShouldContain("points given and taken  0 of 1");
        text.ShouldContain("none exercises give \"sits\" (file0.rules:");
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ShouldContain("it has its effect on 1 placement, seated raise in calves");
    }
}
