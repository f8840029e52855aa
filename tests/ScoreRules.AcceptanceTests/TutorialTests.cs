using System.Text;
using System.Text.RegularExpressions;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

/// <summary>
/// <c>docs/tutorial.md</c>, done by the real tool from an empty folder: text fenced as <c>rules add</c> goes to the end of the
/// file, <c>rules instead</c> takes the place of the last text added, and what stands below a command is its output.
/// SCORERULES_REWRITE=1 writes the outputs anew, never on CI.
/// </summary>
public sealed partial class TutorialTests
{
    private const string Prompt = "> scorerules ";
    private static readonly string Page = Path.Combine(Tool.Root, "docs", "tutorial.md");

    [Fact]
    public void What_the_page_shows_is_what_happens()
    {
        var kept = File.ReadAllText(Page).ReplaceLineEndings("\n");
        var told = Followed(kept);
        if (Environment.GetEnvironmentVariable("SCORERULES_REWRITE") == "1" && Environment.GetEnvironmentVariable("CI") != "true")
        {
            File.WriteAllText(Page, told);
            return;
        }

        told.ShouldBe(kept);
    }

    private static string Followed(string page)
    {
        var folder = Directory.CreateTempSubdirectory("scorerules-tutorial-");
        try
        {
            var house = Path.Combine(folder.CreateSubdirectory("calves").FullName, "house.rules");
            var (before, last) = ("", "");
            var (told, at) = (new StringBuilder(), 0);
            foreach (var block in Block().Matches(page).ToList())
            {
                var (info, text) = (block.Groups["info"].Value, block.Groups["text"].Value);
                told.Append(page[at..block.Index]).Append(info == "console" ? $"```console\n{Commanded(folder.FullName, text.Split('\n')[0])}```" : block.Value);
                at = block.Index + block.Length;
                if (info != "console")
                {
                    before = info == "rules add" ? before + last : before;
                    last = text + "\n";
                    File.WriteAllText(house, before + last);
                }
            }

            return told.Append(page[at..]).ToString();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Commanded(string folder, string line)
    {
        line.ShouldStartWith(Prompt);
        var arguments = Argument().Matches(line[Prompt.Length..]).Select(argument => argument.Value.Trim('"')).ToArray();
        var outcome = Tool.RunIn(folder, "", arguments);
        var output = new StringBuilder(line).Append('\n');
        foreach (var printed in (outcome.Output + outcome.Errors).ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
        {
            output.Append(printed.TrimEnd()).Append('\n');
        }

        return output.ToString();
    }

    [GeneratedRegex("^```(?<info>rules add|rules instead|console)\n(?<text>(?:(?!```).*\n)*)```", RegexOptions.Multiline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Block();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Argument();
}
