using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class DeriveTests
{
    [Fact]
    public void A_mistyped_movement_is_refused_with_the_nearest_name()
    {
        var outcome = Tool.Run("derive", "rulesets/longreach", "seated leg crul");
        outcome.ExitCode.ShouldBe(2);
        outcome.Output.ShouldBeEmpty();
        outcome.Errors.ShouldContain("Did you mean \"seated leg curl\"?");
    }

    [Fact]
    public void A_target_that_the_movement_does_not_train_is_refused_with_those_it_does()
    {
        var outcome = Tool.Run("derive", "rulesets/longreach", "seated leg curl", "--target", "calves");
        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("\"seated leg curl\" does not train \"calves\". It trains hamstrings.");
    }

    [Fact]
    public void A_house_alone_asks_which_movement()
    {
        var outcome = Tool.Run("derive", "rulesets/longreach");
        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("Which movement? Type: scorerules derive rulesets/longreach \"MOVEMENT\".");
    }

    [Fact]
    public void The_picture_goes_to_a_file_when_asked()
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("scorerules").FullName, "curl.svg");
        var outcome = Tool.Run("derive", "rulesets/longreach", "seated leg curl", "--format", "svg", "--out", file);
        outcome.ExitCode.ShouldBe(0);
        outcome.Output.ShouldBeEmpty();
        File.ReadAllText(file).ShouldBe(Tool.Run("derive", "rulesets/longreach", "seated leg curl", "--format", "svg").Output);
        Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
    }
}
