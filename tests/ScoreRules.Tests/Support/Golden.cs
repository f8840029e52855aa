using DiffPlex.DiffBuilder;
using DiffPlex.DiffBuilder.Model;
using Shouldly;

namespace ScoreRules.Tests.Support;

/// <summary>Texts kept in files: a difference is printed line by line; SCORERULES_REWRITE=1 rewrites the file, never on CI.</summary>
internal static class Golden
{
    public static bool Rewrites =>
        Environment.GetEnvironmentVariable("SCORERULES_REWRITE") == "1" && Environment.GetEnvironmentVariable("CI") != "true";

    public static void Check(string actual, params string[] file)
    {
        var path = Repository.PathOf(file);
        if (Rewrites)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
            return;
        }

        File.Exists(path).ShouldBeTrue($"{Path.Combine(file)} is missing; set SCORERULES_REWRITE=1 and run the tests once to write it.");
        var expected = File.ReadAllText(path).ReplaceLineEndings("\n");
        (actual == expected).ShouldBeTrue($"{Path.Combine(file)} differs (- kept, + now):\n{Difference(expected, actual)}\nIf the change is meant, run once with SCORERULES_REWRITE=1 and read the difference before committing.");
    }

    private static string Difference(string expected, string actual) =>
        string.Join('\n', InlineDiffBuilder.Diff(expected, actual).Lines
            .Where(line => line.Type is ChangeType.Inserted or ChangeType.Deleted)
            .Take(60)
            .Select(line => (line.Type == ChangeType.Inserted ? "+ " : "- ") + line.Text));
}
