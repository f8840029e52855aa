using System.Globalization;
using ScoreRules.Fuzzing.Targets;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;

namespace ScoreRules.Fuzzing;

/// <summary>Where the search begins: one statement of each shape that the shipped houses have, small tables, and the words of the language.</summary>
internal static class Seeds
{
    private static readonly string[] Tables =
    [
        "movement;trains;equipment;stretch\nlong curl;elbow flexors;barbell;3\n",
        "movement,also known as,like,source,note\n\"a, b\",\"c|d\",a,\"x\"\"y\",z\n",
        "Movement\tstretch\n\u201Ccurl\u201D\t2,5\ncurl\tbut at a guess unknown\n",
    ];

    /// <summary>Writes <c>rules/</c>, <c>tables/</c> and <c>words.dict</c> into a folder.</summary>
    public static void Write(string folder)
    {
        WriteAll(Path.Combine(folder, "rules"), Statements().Where(text => text.Length < 1500).DistinctBy(Shape).Order(StringComparer.Ordinal));
        WriteAll(Path.Combine(folder, "tables"), Tables);
        File.WriteAllLines(Path.Combine(folder, "words.dict"), Words().Distinct(StringComparer.Ordinal).Select(word => $"\"{word}\""));
    }

    private static IEnumerable<string> Statements() =>
        Directory.EnumerateFiles(Path.Combine(SharedTexts.Folder(), ".."), "*.rules", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .SelectMany(file => File.ReadAllText(file).ReplaceLineEndings("\n").Split("\n\n", StringSplitOptions.RemoveEmptyEntries));

    // First words of its lines: statements that differ only in names are one seed.
    private static string Shape(string text) => string.Join('/', text.Split('\n').Select(line => line.Trim().Split(' ')[0]).Distinct(StringComparer.Ordinal));

    private static IEnumerable<string> Words() =>
        StatementTable.All.Select(head => head.Words).Concat(StatementTable.All.SelectMany(head => head.Lines).Select(use => use.Spec.Starter)).Concat(Units.Printed)
            .Where(word => word.All(char.IsAscii));

    private static void WriteAll(string folder, IEnumerable<string> texts)
    {
        Directory.CreateDirectory(folder);
        foreach (var (index, text) in texts.Index())
        {
            File.WriteAllText(Path.Combine(folder, index.ToString("0000", CultureInfo.InvariantCulture)), text);
        }
    }
}
