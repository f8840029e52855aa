using System.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

/// <summary>Does what <c>docs/tutorial.md</c> tells a newcomer to do, and compares every answer. SCORERULES_REWRITE=1 rewrites the answers, never on CI.</summary>
public sealed class TutorialTests
{
    private const string Fence = "```";
    private const string House = "calves/house.rules";
    private static readonly string Page = Path.Combine(Tool.Root, "docs", "tutorial.md");

    [Fact]
    public void Every_answer_is_the_one_shown()
    {
        using var place = new TemporaryHouse("", "empty.txt");
        var kept = File.ReadAllText(Page).ReplaceLineEndings("\n");
        var played = Play(kept, place);
        if (Environment.GetEnvironmentVariable("SCORERULES_REWRITE") == "1" && Environment.GetEnvironmentVariable("CI") != "true")
        {
            File.WriteAllText(Page, played);
            return;
        }

        played.ShouldBe(kept);
    }

    [Fact]
    public void It_makes_a_mistake_mends_it_and_ends_without_one()
    {
        using var place = new TemporaryHouse("", "empty.txt");
        var played = Play(File.ReadAllText(Page).ReplaceLineEndings("\n"), place);
        played.ShouldContain("       ^^^^^^^^^^^^ not declared anywhere");
        played.ShouldContain("\n2 of 2 expectations hold.\n");
        var check = Tool.RunIn(place.Path, "", "check", "calves", "--warnings-as-errors");
        check.ExitCode.ShouldBe(0, check.Output);
        Tool.RunIn(place.Path, "", "format", "--check", "calves").ExitCode.ShouldBe(0);
    }

    // The page with the answers that came.
    private static string Play(string page, TemporaryHouse place)
    {
        var parts = page.Split($"\n{Fence}");
        for (var i = 1; i < parts.Length; i += 2)
        {
            var lines = parts[i].Split('\n');
            parts[i] = lines[0] switch
            {
                "console" => $"console\n{Answered(lines[1], place)}",
                "rules" => Typed(parts[i], place, before: text => text.Length == 0 ? "" : text + "\n"),
                "rules instead of the last line" => Typed(parts[i], place, before: text => text[..(text.TrimEnd('\n').LastIndexOf('\n') + 1)]),
                _ => throw new InvalidOperationException($"nobody knows what to do with \"{lines[0]}\""),
            };
        }

        return string.Join($"\n{Fence}", parts);
    }

    private static string Answered(string command, TemporaryHouse place)
    {
        var words = Words(command);
        var answer = new StringBuilder(command);
        if (words[0] == "mkdir")
        {
            Directory.CreateDirectory(Path.Combine(place.Path, words[1]));
        }
        else
        {
            words[0].ShouldBe("scorerules");
            var outcome = Tool.RunIn(place.Path, "", [.. words[1..]]);
            answer.Append('\n').Append(outcome.Output.ReplaceLineEndings("\n")).Append(outcome.Errors.ReplaceLineEndings("\n"));
        }

        return answer.ToString().TrimEnd('\n');
    }

    // A command line without its "$", quotes kept together.
    private static string[] Words(string command) =>
        [.. command[2..].Split('"').SelectMany((part, index) => index % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))];

    private static string Typed(string block, TemporaryHouse place, Func<string, string> before)
    {
        var soFar = File.Exists(Path.Combine(place.Path, House)) ? place.Read(House) : "";
        place.Write(House, before(soFar) + block[(block.IndexOf('\n', StringComparison.Ordinal) + 1)..] + "\n");
        return block;
    }
}
