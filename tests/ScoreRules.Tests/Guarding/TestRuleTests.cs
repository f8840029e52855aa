using ScoreRules.Guarding;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Guarding;

public sealed class TestRuleTests
{
    private const string House = """
        attribute load
          rated 0 to 4

        muscle soleus

        target calves
          made of soleus 1 part
          benchmark plain raise

        tiers
          High is from 5 points above the benchmark
          Middle is within 5 points of the benchmark
          Low is the rest

        criterion load
          counts 10
          reads load
          worth 0% at 0, 100% at 4

        movement plain raise
          trains calves
          load is 2

        movement heavy raise
          trains calves
          load is 4

        """;

    [Theory]
    [InlineData("", true)]
    [InlineData("expect heavy raise is above plain raise", true)]
    [InlineData("expect plain raise is above heavy raise", false)]
    [InlineData("never above Low\n  when load is 4\n\nnever below Middle\n  when load is 4", false)]
    [InlineData("never above Low\n  when load is 4\n\nnever below Middle\n  when load is 2", true)]
    [InlineData("criterion more\n  counts 3", false)]
    public void Errors_failed_expectations_and_a_cap_below_a_floor_fail_a_test(string more, bool passes)
    {
        var judgement = Judged.Text(House, more);
        TestRule.Passes(judgement).ShouldBe(passes, string.Join("\n", judgement.Findings.Select(finding => finding.Headline)));
    }
}
