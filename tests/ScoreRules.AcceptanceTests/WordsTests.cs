using System.Text.Json;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class WordsTests
{
    [Fact]
    public void All_kinds_of_words_are_listed_under_a_heading_each()
    {
        var lines = Tool.Run("words", "rulesets/longreach").Output.Split('\n');
        string[] headings = ["Attributes: what can be said of a movement, or of a person", "Derived facts: what mechanics works out, for rules to read", "Kit", "Muscles", "Targets", "Tiers", "Words of the house", "Called facts", "Movements"];
        lines.Where(line => line.Length > 0 && line[0] != ' ').ShouldBe(headings);
        foreach (var word in new[] { "  stretch", "  dumbbells", "  soleus", "  hamstrings", "  Build on it", "  clearly", "  long-loaded", "  seated leg curl" })
        {
            lines.ShouldContain(word);
        }

        lines.ShouldAllBe(line => line.Length <= 78);
    }

    [Theory]
    [InlineData("stretch", "rated 0 to 4", "4  near the end of what the joint allows")]
    [InlineData("LENGTHENING", "  stretch", "also known as")]
    [InlineData("pronated", "  grip", "values: pronated")]
    [InlineData("clearly", "at least 10 points")]
    [InlineData("squat rack", "  equipment", "Kit")]
    [InlineData("complete stimulus", "Called facts")]
    [InlineData("hamstrings", "measured against the lying leg curl", "semimembranosus 33%")]
    [InlineData("Nordic hamstring curl", "  nordic curl", "trains hamstrings")]
    [InlineData("leg curl", "  seated leg curl", "  lying leg curl")]
    public void A_name_shows_only_what_it_means(string name, params string[] shown)
    {
        var outcome = Tool.Run("words", "rulesets/longreach", name);
        outcome.ExitCode.ShouldBe(0);
        foreach (var part in shown)
        {
            outcome.Output.ShouldContain(part, Case.Sensitive);
        }

        outcome.Output.ShouldNotContain("axial load");
    }

    [Fact]
    public void In_a_house_a_name_alone_is_enough() =>
        Tool.RunIn(Path.Combine(Tool.Root, "rulesets", "longreach"), "", "words", "stretch").Output.ShouldContain("rated 0 to 4");

    [Fact]
    public void Json_names_the_place_of_each_word()
    {
        using var json = JsonDocument.Parse(Tool.Run("words", "rulesets/longreach", "stretch", "--format", "json").Output);
        var word = json.RootElement.GetProperty("words").EnumerateArray().First(one => one.GetProperty("kind").GetString() == "attribute");
        word.GetProperty("name").GetString().ShouldBe("stretch");
        word.GetProperty("steps").GetArrayLength().ShouldBe(5);
        word.GetProperty("file").GetString().ShouldBe("rulesets/shared/vocabulary.rules");
        word.GetProperty("line").GetInt32().ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_house_with_errors_still_tells_its_words()
    {
        using var house = new TemporaryHouse("attribute shine\n  rated 0 to 3\n\ncriterion x\n  raeds shine\n");
        var outcome = Tool.RunIn(house.Path, "", "words", ".", "shine");
        outcome.ExitCode.ShouldBe(0);
        outcome.Output.ShouldContain("rated 0 to 3");
        outcome.Errors.ShouldContain("in this house: words of statements that cannot be read are missing");
    }

    [Theory]
    [InlineData("There is no word \"strech\" in this house. Did you mean \"stretch\"?", "rulesets/longreach", "strech")]
    [InlineData("There is no word \"xyzzy\" in this house. scorerules words lists all of them.", "rulesets/longreach", "xyzzy")]
    [InlineData("There is no folder or file \"strech\"", "strech")]
    [InlineData("Too many names", "rulesets/longreach", "seated", "leg curl")]
    [InlineData("There is no form \"html\". Forms are: text, json, markdown.", "rulesets/longreach", "--format", "html")]
    [InlineData("Name a house")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["words", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        outcome.Output.ShouldBeEmpty();
    }
}
