using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Fuzzing.Targets;

/// <summary>The vocabulary that all shipped houses share, parsed once.</summary>
internal static class SharedTexts
{
    private static readonly string[] Names = ["vocabulary.rules", "muscles.rules"];

    /// <summary>Its files.</summary>
    public static ImmutableArray<FileSyntax> Files { get; } = [.. Names.Select(name => SyntaxParser.Parse(new SourceText($"rulesets/shared/{name}", File.ReadAllText(Path.Combine(Folder(), name)))))];

    /// <summary>The vocabulary itself, for spreadsheets.</summary>
    public static RulesetReader Read() => RulesetReader.From(Files);

    /// <summary>Where they stand.</summary>
    public static string Folder()
    {
        var at = AppContext.BaseDirectory;
        while (at is not null && !Directory.Exists(Path.Combine(at, "rulesets", "shared")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at is null ? throw new DirectoryNotFoundException("There is no folder rulesets/shared above the program.") : Path.Combine(at, "rulesets", "shared");
    }
}
