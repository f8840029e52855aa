using System.Text.Json;
using System.Xml.Linq;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class TestCommandTests
{
    private const string Failing = "expect lying leg curl is above seated leg curl\n  because we said so\nexpect romanian deadlift is called stays on target\nexpect seated leg curl is in Special cases for hamstrings\n";

    private const string Small = """
        attribute load
          rated 0 to 4

        muscle soleus

        target calves
          made of soleus 1 part
          benchmark plain raise

        tiers
          High is from 5 points above the benchmark
          Middle is from 5 points below the benchmark
          Low is the rest

        criterion load
          counts 10
          reads load
          worth 0% at 0, 100% at 4

        give 3 points
          named grows
          when load is at least 3

        movement plain raise
          trains calves
          load is 2

        movement heavy raise
          trains calves
          load is 4

        movement light raise
          trains calves
          load is 0

        expect light raise is no higher than Middle

        """;

    [Fact]
    public void A_house_that_keeps_its_word_passes()
    {
        var outcome = Tool.Run("test", "rulesets/longreach");
        outcome.ExitCode.ShouldBe(0, outcome.Output + outcome.Errors);
        outcome.Output.ShouldContain("40 of 40 expectations hold.");
        outcome.Errors.ShouldBeEmpty();
    }

    [Fact]
    public void A_failed_expectation_shows_both_explanations_side_by_side()
    {
        using var house = Longreach(Failing);
        var outcome = Tool.Run("test", house.Path);
        outcome.ExitCode.ShouldBe(1);
        var lines = outcome.Output.Split('\n').Select(line => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries))).ToList();
        lines.ShouldContain("points lying leg curl seated leg curl apart");
        lines.ShouldContain("tension when lengthened 11.7 20.8 -9.1");
        lines.ShouldContain("two movements in one 0.0 4.0 -4.0");
        lines.ShouldContain(line => line.StartsWith("score 68.0 90.8 -22.8", StringComparison.Ordinal));
        lines.ShouldContain("Because we said so");
        lines[^2].ShouldBe("40 of 43 expectations hold.");
    }

    [Fact]
    public void A_failed_claim_about_one_movement_is_compared_with_the_benchmark_and_a_called_fact_says_what_it_rests_on()
    {
        using var house = Longreach(Failing);
        var output = string.Join(' ', Tool.Run("test", house.Path).Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        output.ShouldContain("points seated leg curl lying leg curl apart");
        output.ShouldContain("Why did not hold: asks \"may fail first has none of spinal erectors, balance, body mass\", found may fail first grip, spinal erectors, gluteals");
    }

    [Fact]
    public void Json_carries_the_comparison_whose_parts_add_up_to_the_scores()
    {
        using var house = Longreach(Failing);
        using var json = JsonDocument.Parse(Tool.Run("test", house.Path, "--format", "json").Output);
        json.RootElement.GetProperty("held").GetInt32().ShouldBe(40);
        json.RootElement.GetProperty("failed").GetInt32().ShouldBe(3);
        var comparison = json.RootElement.GetProperty("expectations").EnumerateArray().First(one => !one.GetProperty("holds").GetBoolean()).GetProperty("comparison");
        comparison.GetProperty("parts").EnumerateArray().Sum(part => part.GetProperty("first").GetDouble()).ShouldBe(comparison.GetProperty("firstScore").GetDouble(), 1e-9);
        comparison.GetProperty("parts").EnumerateArray().Sum(part => part.GetProperty("second").GetDouble()).ShouldBe(comparison.GetProperty("secondScore").GetDouble(), 1e-9);
    }

    [Fact]
    public void Junit_has_one_case_for_each_expectation_and_says_why_one_fails()
    {
        using var house = Longreach(Failing);
        var file = Path.Combine(house.Path, "result.xml");
        Tool.Run("test", house.Path, "--junit", file).ExitCode.ShouldBe(1);
        var suite = XDocument.Parse(house.Read("result.xml")).Root!.Element("testsuite")!;
        suite.Attribute("tests")!.Value.ShouldBe("43");
        suite.Attribute("failures")!.Value.ShouldBe("3");
        suite.Elements("testcase").Count().ShouldBe(43);
        suite.Elements("testcase").Count(one => one.Element("failure") is not null).ShouldBe(3);
        suite.Descendants("failure").First().Value.ShouldContain("tension when lengthened");
    }

    [Fact]
    public void Errors_in_the_rules_fail_the_test_and_stand_in_the_report()
    {
        using var house = new TemporaryHouse("criterion x\n  raeds \u0001y\n");
        var outcome = Tool.RunIn(house.Path, "", "test", ".", "--junit", "out.xml");
        outcome.ExitCode.ShouldBe(1);
        outcome.Errors.ShouldContain("SR1004");
        XDocument.Parse(house.Read("out.xml")).Descendants("error").ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("There is no folder or file \"rulesets/longrech\"", "rulesets/longrech")]
    [InlineData("cannot be written", "rulesets/longreach", "--junit", "no/such/folder/out.xml")]
    [InlineData("cannot be written", "rulesets/longreach", "--junit", "docs")]
    [InlineData("There is no form \"xml\"", "rulesets/longreach", "--format", "xml")]
    [InlineData("Too many names", "rulesets/longreach", "rulesets/shared")]
    [InlineData("--least takes a whole percentage from 0 to 100, such as 90, not \"most\".", "rulesets/longreach", "--least", "most")]
    [InlineData("--least takes a whole percentage from 0 to 100, such as 90, not \"101\".", "rulesets/longreach", "--least", "101")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["test", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        outcome.Output.ShouldBeEmpty();
    }

    [Fact]
    public void Coverage_lists_the_rules_that_no_expectation_exercises()
    {
        using var house = new TemporaryHouse(Small);
        var outcome = Tool.RunIn(house.Path, "", "test", ".", "--coverage");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldContain("points given and taken  0 of 1");
        outcome.Output.ShouldContain("none exercises give \"grows\" (house.rules:");
    }

    [Fact]
    public void Break_names_what_nobody_noticed_and_its_pins_pasted_in_notice_all()
    {
        using var house = new TemporaryHouse(Small);
        var first = Tool.RunIn(house.Path, "", "test", ".", "--break");
        first.ExitCode.ShouldBe(0, first.Errors);
        first.Errors.ShouldBeEmpty();
        first.Output.ShouldContain("No expectation noticed");
        first.Output.ShouldNotContain("\u001b");
        var pins = first.Output.Split('\n').Where(line => line.StartsWith("expect ", StringComparison.Ordinal)).ToList();
        pins.ShouldNotBeEmpty();

        house.Write("pins.rules", string.Join('\n', pins) + "\n");
        var second = Tool.RunIn(house.Path, "", "test", ".", "--least", "100");
        second.ExitCode.ShouldBe(0, second.Output + second.Errors);
        second.Output.ShouldContain("(100 %)");
        second.Output.ShouldNotContain("No expectation noticed");
    }

    [Fact]
    public void Least_fails_a_house_that_notices_too_little_and_json_says_how_much()
    {
        using var house = new TemporaryHouse(Small);
        var outcome = Tool.RunIn(house.Path, "", "test", ".", "--least", "90", "--format", "json");
        outcome.ExitCode.ShouldBe(1);
        using var json = JsonDocument.Parse(outcome.Output);
        var breakages = json.RootElement.GetProperty("breakages");
        breakages.GetProperty("score").GetDouble().ShouldBeLessThan(0.9);
        breakages.GetProperty("noticed").GetInt32().ShouldBe(breakages.GetProperty("all").EnumerateArray().Count(one => one.GetProperty("noticedBy").GetArrayLength() > 0));
        breakages.GetProperty("pins").GetArrayLength().ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_broken_house_says_what_is_wrong_instead_of_being_broken_further()
    {
        using var house = new TemporaryHouse("criterion x\n  raeds y\n");
        var outcome = Tool.RunIn(house.Path, "", "test", ".", "--break", "--coverage");
        outcome.ExitCode.ShouldBe(1);
        outcome.Errors.ShouldContain("SR1004");
        outcome.Output.ShouldBeEmpty();
    }

    [Fact]
    public void A_house_that_ranks_nothing_has_nothing_to_break()
    {
        using var house = new TemporaryHouse("note Nothing yet.\n");
        var outcome = Tool.RunIn(house.Path, "", "test", ".", "--break", "--coverage");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldContain("Nothing is ranked yet, so there is nothing to break.");
    }

    private static TemporaryHouse Longreach(string more)
    {
        var house = new TemporaryHouse(more, "more.rules");
        foreach (var file in Directory.GetFiles(Path.Combine(Tool.Root, "rulesets", "longreach"), "*.rules"))
        {
            house.Write(Path.GetFileName(file), File.ReadAllText(file));
        }

        return house;
    }
}
