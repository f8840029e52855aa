using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Fuzzing;

/// <summary>Sound texts to break: the statements of the shipped houses, and small tables.</summary>
internal static class Corpus
{
    /// <summary>Every statement of every shipped file, in the order of files.</summary>
    public static readonly string[] Statements =
    [
        .. Directory.GetFiles(Repository.PathOf("rulesets"), "*.rules", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .SelectMany(file => File.ReadAllText(file).ReplaceLineEndings("\n").Split("\n\n", StringSplitOptions.RemoveEmptyEntries)),
    ];

    /// <summary>Tables with each kind of column, separator and quote.</summary>
    public static readonly string[] Tables =
    [
        "movement;trains;equipment;stretch;note\nlong curl;elbow flexors;barbell|bench;3;a; b\nshort curl;elbow flexors;nothing;unknown;\n",
        "movement,also known as,like,source,stretch\n\"a, b\",\"c|d\",,\"x\"\"y\",at a guess 2.5\nb,,\"a, b\",\"two\nlines\",but 3\n",
        "\uFEFFmovement\tlaterality\tstretch\r\ncurl\tbilateral\t2,5\r\n\u201Cpress\u201D\tunilateral\t1 to 3\r\n",
    ];

    /// <summary>Texts that once made a reader fail; each file is named after what it fails.</summary>
    public static IEnumerable<(string Target, string Text)> Kept() =>
        Directory.GetFiles(Repository.PathOf("tests", "ScoreRules.Tests", "Fuzzing", "Kept"), "*.txt").Order(StringComparer.Ordinal)
            .Select(file => (Path.GetFileName(file).Split('-')[0], File.ReadAllText(file)));
}
