using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

public sealed class OverrideCircleTests
{
    [Fact]
    public void Rules_that_override_one_another_over_a_third_are_refused_before_the_engine_sees_them()
    {
        string Give(string name, string overrides) => $"give 1 points\n  named {name}\n  overrides {overrides}\n  always\n\n";
        var findings = Judged.Text(Give("one", "two") + Give("two", "three") + Give("three", "one")).Findings;
        findings.Select(finding => (finding.Code, finding.Severity)).ShouldBe([("SR4006", Severity.Error), ("SR4006", Severity.Error), ("SR4006", Severity.Error)]);
    }
}
