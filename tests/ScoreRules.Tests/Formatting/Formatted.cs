using ScoreRules.Language.Formatting;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Xunit;

namespace ScoreRules.Tests.Formatting;

internal static class Formatted
{
    public static string Text(string text) => RulesFormatter.Format(new SourceText("some.rules", text)).Text;

    /// <summary>Every shipped rule file, by its path from the root of the repository.</summary>
    public static TheoryData<string> Files() =>
    [
        .. Directory.GetFiles(Repository.PathOf("rulesets"), "*.rules", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(path => Path.GetRelativePath(Repository.Root, path)),
    ];
}
