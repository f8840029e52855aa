using System.Text.Json;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class AskTests
{
    private const string House = "rulesets/longreach";

    [Fact]
    public void A_question_is_answered_word_by_word_or_as_one_text()
    {
        var outcome = Tool.Run("ask", House, "why", "seated", "leg", "curl", "is", "above", "lying", "leg", "curl");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldContain("Enough          tension when lengthened +9.1");
        outcome.Output.ShouldContain("Education, not medical advice.");
        outcome.Output.ShouldContain("Stop            lying leg curl and seated leg curl: Stop if a movement causes");
        Tool.Run("ask", House, "ask why seated leg curl is above lying leg curl?").Output.ShouldBe(outcome.Output);
    }

    [Fact]
    public void Without_a_question_the_house_answers_its_own()
    {
        var output = Tool.Run("ask", House).Output;
        string[] order = ["\nWhat lifts dumbbell kickback", "\nWhy seated leg curl is above lying leg curl", "\nWhat is lost without cable column"];
        var places = order.Select(question => output.IndexOf(question, StringComparison.Ordinal)).ToList();
        places.ShouldAllBe(place => place > 0);
        places.ShouldBe(places.Order());
    }

    [Fact]
    public void In_a_house_the_question_alone_is_enough() =>
        Tool.RunIn(Path.Combine(Tool.Root, "rulesets", "longreach"), "", "ask", "what rests on stretch").Output.ShouldContain("placements would stand in another tier without \"stretch\"");

    [Fact]
    public void A_target_narrows_the_answer()
    {
        var output = Tool.Run("ask", House, "what is lost without cable column", "--target", "chest").Output;
        output.ShouldContain("Without cable column");
        output.ShouldNotContain("Elbow flexors:");
    }

    [Fact]
    public void Json_carries_numbers_rules_and_cautions()
    {
        using var json = JsonDocument.Parse(Tool.Run("ask", House, "what lifts dumbbell kickback to Level with the benchmark", "--format", "json").Output);
        var answer = json.RootElement.GetProperty("answers")[0];
        json.RootElement.GetProperty("notice").GetString()!.ShouldStartWith("Education, not medical advice.");
        answer.GetProperty("question").GetString().ShouldBe("what lifts dumbbell kickback to Level with the benchmark");
        answer.GetProperty("cautions").GetArrayLength().ShouldBeGreaterThan(0);
        var line = answer.GetProperty("sections")[0].GetProperty("lines")[0];
        line.GetProperty("figures").GetProperty("changes")[0].GetProperty("attribute").GetString().ShouldBe("long tension");
        json.RootElement.GetProperty("inputs").EnumerateArray().Select(input => input.GetProperty("path").GetString()).ShouldNotContain("(question)");
    }

    [Fact]
    public void A_sore_joint_brings_the_referral_first()
    {
        var output = Tool.Run("ask", House, "what a sore elbow costs").Output;
        output.IndexOf("First           See a licensed clinician", StringComparison.Ordinal).ShouldBeInRange(1, output.IndexOf("Elbow extensors:", StringComparison.Ordinal));
        output.ShouldContain("lower in this flag");
        output.ShouldNotContain(" safe", Case.Insensitive);
    }

    [Fact]
    public void A_profile_says_whose_kit_is_meant() =>
        Tool.Run("ask", House, "what to buy", "--profile", "quiet garage").Output.ShouldContain("For quiet garage, the piece that adds most is");

    [Theory]
    [InlineData("\"kickback\" is not a movement", "what lifts kickback")]
    [InlineData("did you mean \"lying leg curl\"?", "why seated leg curl is above lying leg crul")]
    [InlineData("\"Keep\" is not a tier", "what lifts dumbbell kickback to Keep")]
    [InlineData("\"cable colum\" is not a word for \"equipment\"", "what is lost without cable colum")]
    [InlineData("did you mean \"cable column\"?", "what is lost without cable colum")]
    [InlineData("\"elbw\" is not a joint that movements are rated for", "what a sore elbw costs")]
    [InlineData("did you mean \"complete stimulus\"?", "why not complete stimulis for barbell curl")]
    [InlineData("write \"above\"", "why leg press is better than sit-to-stand")]
    [InlineData("A movement is compared with itself", "how firmly leg press is above leg press")]
    [InlineData("That is not a question that can be answered by computation.", "should I squat")]
    [InlineData("what lifts MOVEMENT to TIER", "should I squat")]
    public void A_wrong_name_ends_with_code_2_and_a_way_out(string sentence, string question)
    {
        var outcome = Tool.Run("ask", House, question);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        outcome.Output.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("There is no folder or file \"nowhere\"", "nowhere", "what is shaky")]
    [InlineData("There is no profile \"qiet garage\" in this house. Did you mean \"quiet garage\"?", House, "what to buy", "--profile", "qiet garage")]
    [InlineData("There is no target \"hamstring\". Did you mean \"hamstrings\"?", House, "what is shaky", "--target", "hamstring")]
    [InlineData("This house asks nothing itself.", "rulesets/linden-court")]
    [InlineData("Name a house")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["ask", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
    }

    [Fact]
    public void A_house_with_errors_is_not_asked()
    {
        using var house = new TemporaryHouse("attribute shine\n  rated 0 to 3\n\ncriterion x\n  raeds shine\n");
        var outcome = Tool.RunIn(house.Path, "", "ask", ".", "what is shaky");
        outcome.ExitCode.ShouldBe(1);
        outcome.Errors.ShouldContain("Nothing is ranked until the errors are mended.");
    }
}
