using ScoreRules.Language.Formatting;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Text;

namespace ScoreRules.Fuzzing.Targets;

/// <summary>Any text can be parsed and laid out; what is laid out once stays so.</summary>
internal static class ParseTarget
{
    /// <summary>Parses and formats a text.</summary>
    public static void Run(string text)
    {
        var source = new SourceText("any.rules", text);
        Promises.Keep(SyntaxParser.Parse(source).Findings);
        var once = RulesFormatter.Format(source).Text;
        Promises.Demand(RulesFormatter.Format(new SourceText("any.rules", once)).Text == once, "Formatting twice is not formatting once.");
    }
}
