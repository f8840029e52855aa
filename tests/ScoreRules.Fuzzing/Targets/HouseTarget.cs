using ScoreRules.Language.Binding;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Text;

namespace ScoreRules.Fuzzing.Targets;

/// <summary>Any text can be read as a house on the shared vocabulary: parsed, put together, bound, checked.</summary>
internal static class HouseTarget
{
    /// <summary>Reads a text as a house.</summary>
    public static void Run(string text)
    {
        var reader = RulesetReader.From([SyntaxParser.Parse(new SourceText("house/house.rules", text)), .. SharedTexts.Files]);
        reader.Bind([]);
        if (!reader.Findings.HasErrors)
        {
            reader.CheckNames();
        }

        Promises.Keep(reader.Findings.ToSorted());
    }
}
