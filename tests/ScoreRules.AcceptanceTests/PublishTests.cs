using System.Text;
using System.Text.Json.Nodes;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class PublishTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("scorerules").FullName;

    private string Shelf => Path.Combine(folder, "editions");

    [Fact]
    public void An_edition_holds_rules_rankings_expectations_and_a_list_of_hashes()
    {
        var outcome = Publish("rulesets/harbour-lane");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldBe($"{Shelf}/harbour-lane-1.0.0\n");
        var files = Files("harbour-lane-1.0.0").Keys;
        files.ShouldContain("rules/harbour-lane/house.rules");
        files.ShouldContain("rules/longreach/studies.rules");
        files.ShouldContain("rules/shared/movements.rules");
        string[] made = ["page.html", "ranking.md", "ranking.csv", "ranking.json", "expectations.json"];
        made.Except(files).ShouldBeEmpty();
        var contents = JsonNode.Parse(File.ReadAllText(Path.Combine(Shelf, "harbour-lane-1.0.0", "edition.json")))!;
        contents["date"]!.GetValue<string>().ShouldBe("2031-08-20");
        contents["checkedBy"]!.GetValue<string>().ShouldBe("the morning coach");
        contents["files"]!.AsArray().Select(file => file!["path"]!.GetValue<string>()).ShouldBe(files.Except(["edition.json"]));
        Verify().ExitCode.ShouldBe(0);
    }

    [Fact]
    public void The_frozen_rules_rank_by_themselves()
    {
        Publish("rulesets/harbour-lane", "--without-page").ExitCode.ShouldBe(0);
        var outcome = Tool.RunIn(Path.Combine(Shelf, "harbour-lane-1.0.0"), "", "rank", "rules/harbour-lane", "--format", "json");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldBe(File.ReadAllText(Path.Combine(Shelf, "harbour-lane-1.0.0", "ranking.json")));
    }

    [Fact]
    public void A_second_run_from_another_place_in_another_culture_makes_the_same_bytes()
    {
        Publish("rulesets/linden-court").ExitCode.ShouldBe(0);
        var first = Files("");
        var copy = Path.Combine(folder, "elsewhere");
        Copy("linden-court", Path.Combine(copy, "rulesets", "a-name-of-its-own"));
        Copy("shared", Path.Combine(copy, "rulesets", "shared"));
        var again = Tool.RunIn(Path.Combine(copy, "rulesets", "a-name-of-its-own"), "", [new("LANG", "tr_TR.UTF-8"), new("LC_ALL", "tr_TR.UTF-8"), new("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "0"), new("TZ", "Asia/Tokyo")], "publish", "--out", Path.Combine(copy, "editions"));
        again.ExitCode.ShouldBe(0, again.Errors);
        Same(first, Read(Path.Combine(copy, "editions")));
        Publish("rulesets/linden-court").Errors.ShouldContain("It was published before, with the same bytes.");
        Same(first, Files(""));
    }

    [Fact]
    public void One_byte_edited_a_file_gone_and_a_file_added_are_each_named()
    {
        Publish("rulesets/linden-court").ExitCode.ShouldBe(0);
        var edition = Path.Combine(Shelf, "linden-court-1.0.0");
        var page = File.ReadAllBytes(Path.Combine(edition, "page.html"));
        page[page.Length / 2] ^= 1;
        File.WriteAllBytes(Path.Combine(edition, "page.html"), page);
        File.Delete(Path.Combine(edition, "ranking.md"));
        File.WriteAllText(Path.Combine(edition, "notes.txt"), "mine");
        var outcome = Verify("linden-court-1.0.0");
        outcome.ExitCode.ShouldBe(1);
        outcome.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)[1..].ShouldBe(
        [
            "  - page.html was changed after it was published: its SHA-256 is not the one in edition.json.",
            "  - ranking.md is missing.",
            "  - notes.txt was added: edition.json does not list it.",
        ]);
    }

    [Fact]
    public void A_ranking_that_was_changed_together_with_its_hash_is_found_by_judging_again()
    {
        Publish("rulesets/linden-court", "--without-page").ExitCode.ShouldBe(0);
        var edition = Path.Combine(Shelf, "linden-court-1.0.0");
        var path = Path.Combine(edition, "ranking.csv");
        var text = File.ReadAllText(path).Replace("hammer curl", "our new curl", StringComparison.Ordinal);
        File.WriteAllText(path, text);
        var contents = JsonNode.Parse(File.ReadAllText(Path.Combine(edition, "edition.json")))!;
        var part = contents["files"]!.AsArray().Single(file => file!["path"]!.GetValue<string>() == "ranking.csv")!;
        part["sha256"] = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(text)));
        part["bytes"] = Encoding.UTF8.GetByteCount(text);
        File.WriteAllText(Path.Combine(edition, "edition.json"), contents.ToJsonString());
        var outcome = Verify();
        outcome.ExitCode.ShouldBe(1);
        outcome.Output.ShouldContain("ranking.csv is not what the rules say, although its SHA-256 is the one in edition.json.");
        outcome.Output.ShouldContain("1 fault.");
    }

    [Theory]
    [InlineData("\"tool\": \"", "\"tool\": \"9.", "It was made by scorerules 9.")]
    [InlineData("the two instructors", "somebody else", "edition.json was changed: writtenBy is not what the rules say.")]
    [InlineData("2031-03-03", "2031-03-04", "edition.json was changed: ruleset and date are not what the rules say.")]
    [InlineData("\"layer\": 1", "\"layer\": 7", "cannot be read as the contents of an edition")]
    [InlineData("{", "", "cannot be read as the contents of an edition")]
    [InlineData("\"schemaVersion\": 1", "\"schemaVersion\": 2", "it is written in form 2, and this program knows form 1")]
    public void A_list_of_contents_that_was_changed_is_named(string from, string to, string sentence)
    {
        Publish("rulesets/linden-court", "--without-page").ExitCode.ShouldBe(0);
        var path = Path.Combine(Shelf, "linden-court-1.0.0", "edition.json");
        File.WriteAllText(path, File.ReadAllText(path).Replace(from, to, StringComparison.Ordinal));
        var outcome = Verify("linden-court-1.0.0");
        outcome.ExitCode.ShouldBe(1, outcome.Errors);
        outcome.Output.ShouldContain(sentence);
    }

    [Fact]
    public void A_failing_expectation_refuses_and_writes_nothing()
    {
        using var house = new TemporaryHouse("expect nordic curl is above seated leg curl\n", "more.rules");
        Copy("linden-court", house.Path);
        var outcome = Publish(house.Path);
        outcome.ExitCode.ShouldBe(1);
        outcome.Errors.ShouldContain("Nothing is published");
        Directory.Exists(Shelf).ShouldBeFalse();
    }

    [Fact]
    public void Errors_in_the_rules_refuse_and_write_nothing()
    {
        using var house = new TemporaryHouse("criterion\n", "more.rules");
        Copy("linden-court", house.Path);
        var outcome = Publish(house.Path);
        outcome.ExitCode.ShouldBe(1);
        outcome.Errors.ShouldContain("SR1");
        Directory.Exists(Shelf).ShouldBeFalse();
    }

    [Fact]
    public void An_edition_that_is_there_and_differs_is_kept_until_told_otherwise()
    {
        Publish("rulesets/linden-court", "--without-page").ExitCode.ShouldBe(0);
        var before = Files("");
        using var house = Changed();
        var outcome = Publish(house.Path, "--without-page");
        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("is there already and differs, so it is left as it is.");
        Same(before, Files(""));
        Publish(house.Path, "--without-page", "--edition", "next").ExitCode.ShouldBe(0);
        Files("").Keys.ShouldContain("next/edition.json");
        var list = File.ReadAllText(Path.Combine(Shelf, "index.md"));
        list.ShouldContain("**What changed.** Since 3 March 2031 (edition ");
        list.ShouldContain("New caution: Have water at hand.");
        list.ShouldContain(": from ");
        Publish(house.Path, "--without-page", "--replace").ExitCode.ShouldBe(0);
        File.ReadAllText(Path.Combine(Shelf, "linden-court-1.0.0", "rules", "linden-court", "more.rules")).ShouldContain("Have water at hand");
        Verify().ExitCode.ShouldBe(0);
    }

    [Fact]
    public void A_list_page_that_is_not_up_to_date_is_named_and_mended_by_publishing_again()
    {
        Publish("rulesets/linden-court", "--without-page").ExitCode.ShouldBe(0);
        File.AppendAllText(Path.Combine(Shelf, "index.html"), " ");
        var outcome = Verify();
        outcome.ExitCode.ShouldBe(1);
        outcome.Output.ShouldContain("index.html is not what the editions say");
        Publish("rulesets/linden-court", "--without-page").ExitCode.ShouldBe(0);
        Verify().ExitCode.ShouldBe(0);
    }

    [Fact]
    public void A_house_without_a_day_is_told_what_to_write_and_takes_one_from_the_command()
    {
        using var house = Changed("  checked 3 March 2031 by a third instructor who did not write it\n", "");
        var refused = Publish(house.Path, "--without-page");
        refused.ExitCode.ShouldBe(2);
        refused.Errors.ShouldContain("An edition needs a day, and \"Linden Court\" names none. Write when it was checked under its first line, for example \"checked 4 May 2031 by a second coach\", or give the day: --date 2031-05-04.");
        Directory.Exists(Shelf).ShouldBeFalse();
        Publish(house.Path, "--without-page", "--date", "2031-04-01").ExitCode.ShouldBe(0);
        File.ReadAllText(Path.Combine(Shelf, "index.md")).ShouldContain("1 April 2031");
        Verify().ExitCode.ShouldBe(0);
    }

    [Fact]
    public void A_run_that_is_killed_while_it_writes_leaves_the_old_edition_whole()
    {
        Publish("rulesets/linden-court", "--without-page").ExitCode.ShouldBe(0);
        var before = Files("");
        using var house = Changed();

        // No file may grow over 100 kB: the ranking of a house does, so writing it fails or kills the run.
        var outcome = Tool.Limited(100, "publish", house.Path, "--out", Shelf, "--without-page", "--replace");
        outcome.ExitCode.ShouldNotBe(0, outcome.Output);
        File.Exists(Path.Combine(Shelf, ".linden-court-1.0.0.part", "rules", "shared", "cautions.rules")).ShouldBe(outcome.ExitCode > 128, outcome.Errors);
        Same(before, Files("").Where(file => !file.Key.StartsWith('.')).ToDictionary());
        Verify().ExitCode.ShouldBe(0);
        Publish(house.Path, "--without-page", "--replace").ExitCode.ShouldBe(0);
        Files("").Keys.ShouldAllBe(path => !path.StartsWith('.'));
        Verify().ExitCode.ShouldBe(0);
    }

    [Fact]
    public void Json_says_the_same_as_the_text()
    {
        Publish("rulesets/linden-court", "--without-page").ExitCode.ShouldBe(0);
        File.Delete(Path.Combine(Shelf, "linden-court-1.0.0", "ranking.md"));
        var json = JsonNode.Parse(Tool.Run("verify", Shelf, "--format", "json").Output)!;
        json["editions"]![0]!["faults"]![0]!.GetValue<string>().ShouldBe("ranking.md is missing.");
        json["editions"]![0]!["judged"]!.GetValue<bool>().ShouldBeTrue();
    }

    [Theory]
    [InlineData("Where to? Type: scorerules publish rulesets/longreach --out DIR", "publish", "rulesets/longreach")]
    [InlineData("is a file, and a folder was expected", "publish", "rulesets/longreach", "--out", "README.md")]
    [InlineData("\"../x\" cannot name an edition.", "publish", "rulesets/longreach", "--out", "no-such-folder", "--edition", "../x")]
    [InlineData("\"index.html\" cannot name an edition.", "publish", "rulesets/longreach", "--out", "no-such-folder", "--edition", "index.html")]
    [InlineData("There is no folder \"no-such-folder\"", "verify", "no-such-folder")]
    [InlineData("\"docs/schema\" holds no edition", "verify", "docs/schema")]
    [InlineData("DIR is missing.", "verify")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(arguments);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        Directory.Exists(Path.Combine(Tool.Root, "no-such-folder")).ShouldBeFalse();
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private Tool.Outcome Publish(string house, params string[] more) => Tool.Run(["publish", house, "--out", Shelf, .. more]);

    private Tool.Outcome Verify(string edition = "") => Tool.Run("verify", Path.Combine(Shelf, edition));

    private SortedDictionary<string, string> Files(string edition) => Read(Path.Combine(Shelf, edition));

    private static SortedDictionary<string, string> Read(string folder) =>
        new(Directory.GetFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(path => Path.GetRelativePath(folder, path), path => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)))), StringComparer.Ordinal);

    private static void Same(IReadOnlyDictionary<string, string> one, IReadOnlyDictionary<string, string> other) => Lines(other).ShouldBe(Lines(one));

    private static IEnumerable<string> Lines(IReadOnlyDictionary<string, string> files) => files.Select(file => $"{file.Key} {file.Value}").Order(StringComparer.Ordinal);

    private static void Copy(string house, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.GetFiles(Path.Combine(Tool.Root, "rulesets", house), "*.rules"))
        {
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        }
    }

    /// <summary>Linden Court with a caution more and other points for what is steady.</summary>
    private static TemporaryHouse Changed(string from = "never written", string to = "")
    {
        var house = new TemporaryHouse("caution Have water at hand.\n  named water\n  always\n  severity low\n  shown above the ranking\n\ngive 9 points\n  named one side\n  when laterality is unilateral\n  only for elbow flexors\n  because it shows which side is behind\n", "more.rules");
        Copy("linden-court", house.Path);

        // Its expectations notice such points, as they should.
        house.Write("expectations.rules", "note None here.\n");
        house.Write("house.rules", house.Read("house.rules").Replace(from, to, StringComparison.Ordinal));
        return house;
    }
}
