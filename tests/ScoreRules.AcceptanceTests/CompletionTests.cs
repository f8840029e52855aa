using System.Diagnostics;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

/// <summary>The script of bash in a real bash; the others by what they hold.</summary>
public sealed class CompletionTests
{
    [Theory]
    [InlineData("scorerules ", "check rank explain ask choose derive studies report teach test publish verify compare new words fix format code completion")]
    [InlineData("scorerules ex", "explain")]
    [InlineData("scorerules check --f", "--format")]
    [InlineData("scorerules check --format ", "text short json")]
    [InlineData("scorerules rank --format j", "json")]
    [InlineData("scorerules format --", "--check --help")]
    [InlineData("scorerules rank long", "rulesets/longreach rulesets/longreach-second")]
    [InlineData("scorerules rank rulesets/lo", "rulesets/longreach rulesets/longreach-second")]
    [InlineData("scorerules fix rulesets/longreach/e", "rulesets/longreach/expectations.rules")]
    [InlineData("scorerules completion ", "bash zsh fish")]
    [InlineData("scorerules code SR100", "SR1001 SR1002 SR1003 SR1004 SR1005 SR1006 SR1007 SR1008 SR1009")]
    [InlineData("scorerules rank rulesets/longreach --target ", "")]
    public void Bash_offers(string typed, string offered) => Offered(Tool.Root, typed).ShouldBe(offered.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void Bash_knows_the_function_after_the_script_was_read() =>
        Bash(Tool.Root, "complete -p scorerules").ShouldBe("complete -F _scorerules scorerules\n");

    [Fact]
    public void A_house_whose_folder_has_blanks_in_its_name_is_offered_whole()
    {
        using var place = new TemporaryHouse("", "empty.txt");
        Directory.CreateDirectory(Path.Combine(place.Path, "our own house"));
        place.Write("our own house/a.rules", "note a\n");
        Offered(place.Path, "scorerules rank ou").ShouldBe(["our own house"]);
    }

    [Theory]
    [InlineData("zsh", "#compdef scorerules", "'{0}:")]
    [InlineData("fish", "complete -c scorerules", "-a {0} -d")]
    public void Zsh_and_fish_have_a_script_with_every_command(string shell, string mark, string line)
    {
        var outcome = Tool.Run("completion", shell);
        outcome.ExitCode.ShouldBe(0);
        outcome.Output.ShouldContain(mark);
        foreach (var command in Offered(Tool.Root, "scorerules "))
        {
            outcome.Output.ShouldContain(line.Replace("{0}", command, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("SHELL is missing")]
    [InlineData("There is no script for \"tcsh\". Shells are: bash, zsh, fish.", "tcsh")]
    [InlineData("Too many names", "bash", "zsh")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["completion", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        outcome.Output.ShouldBeEmpty();
    }

    private static string[] Offered(string folder, string typed)
    {
        var words = typed.Split(' ').Select(word => $"'{word}'").ToList();
        var offer = $"COMP_WORDS=({string.Join(' ', words)}); COMP_CWORD={words.Count - 1}; _scorerules; printf '%s\\n' \"${{COMPREPLY[@]}}\"";
        return Bash(folder, offer).Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static string Bash(string folder, string command)
    {
        var start = new ProcessStartInfo("bash") { WorkingDirectory = folder, RedirectStandardInput = true, RedirectStandardOutput = true, UseShellExecute = false };
        start.ArgumentList.Add("--norc");
        using var process = Process.Start(start)!;
        process.StandardInput.Write(Tool.Run("completion", "bash").Output + command + "\n");
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
