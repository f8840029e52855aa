using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class NewTests
{
    [Theory]
    [InlineData("hamstrings")]
    [InlineData("Elbow Flexors")]
    [InlineData(null)]
    public void A_new_house_passes_its_own_check_test_and_layout(string? target)
    {
        using var parent = new TemporaryHouse("", "empty.txt");
        var folder = Path.Combine(parent.Path, "my house");
        var made = Tool.Run(target is null ? ["new", folder] : ["new", folder, "--target", target]);
        made.ExitCode.ShouldBe(0, made.Errors);
        made.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Path.GetFileName).ShouldBe(["house.rules", "targets.rules", "WORDS.md"]);

        var check = Tool.Run("check", folder, "--warnings-as-errors");
        check.ExitCode.ShouldBe(0, check.Output);
        check.Output.ShouldStartWith("no errors, no warnings.\nmy house: ");
        Tool.Run("test", folder).Output.ShouldBe("2 of 2 expectations hold.\n");
        Tool.Run("format", "--check", folder).ExitCode.ShouldBe(0);
    }

    [Fact]
    public void It_holds_one_of_each_thing_a_first_house_needs_and_its_words()
    {
        using var parent = new TemporaryHouse("", "empty.txt");
        Tool.Run("new", Path.Combine(parent.Path, "x"), "--target", "calves").ExitCode.ShouldBe(0);
        var heads = parent.Read("x/house.rules").Split('\n').Where(line => line.Length > 0 && line[0] != ' ').Select(line => line.Split(' ')[0]).ToList();
        heads.Count(head => head == "criterion").ShouldBe(3);
        heads.Count(head => head == "expect").ShouldBe(2);
        foreach (var head in new[] { "ruleset", "philosophy", "target", "tiers", "call", "give", "never" })
        {
            heads.Count(one => one == head).ShouldBe(1, head);
        }

        parent.Read("x/house.rules").ShouldContain("target calves\n");
        parent.Read("x/WORDS.md").ShouldContain("- **stretch**: rated 0 to 4");
    }

    [Fact]
    public void A_name_that_needs_quotes_gets_them()
    {
        using var parent = new TemporaryHouse("", "empty.txt");
        var folder = Path.Combine(parent.Path, "2 and a half, not more");
        Tool.Run("new", folder).ExitCode.ShouldBe(0);
        parent.Read("2 and a half, not more/house.rules").ShouldContain("ruleset \"2 and a half, not more\"\n");
        Tool.Run("check", folder).ExitCode.ShouldBe(0);
    }

    [Fact]
    public void A_folder_that_is_not_empty_is_refused_and_left_alone()
    {
        using var house = new TemporaryHouse("note mine\n");
        var outcome = Tool.Run("new", house.Path);
        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("is not empty, so nothing is written there");
        Directory.GetFiles(house.Path).Length.ShouldBe(1);
        house.Read("house.rules").ShouldBe("note mine\n");
    }

    [Fact]
    public void Without_shared_words_nothing_is_written_and_a_sentence_says_how()
    {
        using var place = new TemporaryHouse("", "empty.txt");
        var outcome = Tool.RunIn(place.Path, "", "new", "mine");
        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("copy rulesets/shared there first");
        Directory.Exists(Path.Combine(place.Path, "mine")).ShouldBeFalse();
    }

    [Theory]
    [InlineData("FOLDER is missing")]
    [InlineData("\"README.md\" is a file", "README.md")]
    [InlineData("Too many names", "a", "b")]
    [InlineData("No movement trains \"hamstrngs\". Did you mean \"hamstrings\"?", "rulesets/not-there-yet", "--target", "hamstrngs")]
    [InlineData("There is no option \"--targt\"", "rulesets/not-there-yet", "--targt")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["new", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        Directory.Exists(Path.Combine(Tool.Root, "rulesets", "not-there-yet")).ShouldBeFalse();
    }
}
