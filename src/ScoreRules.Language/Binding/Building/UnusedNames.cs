using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Names that a house declares and then mentions nowhere: often the same thing spelt in two ways.</summary>
internal static class UnusedNames
{
    // These have their meaning by themselves; a study uses the last without naming it.
    private static readonly string[] Fixed = ["we are sure", "we think so", "we may be wrong", "about the same"];

    /// <summary>Reports called facts, words and own attributes that no other statement mentions.</summary>
    public static void Report(BindContext context)
    {
        Report(context, context.CalledFacts);
        Report(context, context.Words);
        Report(context, context.Attributes);
    }

    // What the shared folder offers is not owed to any house.
    private static void Report<T>(BindContext context, NameTable<T> table)
        where T : class
    {
        foreach (var (name, place) in table.Unused.Where(unused => unused.Location.Source.IsOwn && !Fixed.Contains(NameText.Key(unused.Name), StringComparer.Ordinal)))
        {
            context.Findings.Add(new Diagnostic("SR2011", Severity.Warning, $"\"{name}\" is declared and mentioned nowhere", new Label(place, "never used"))
            {
                Suggestions = [new Suggestion("use it, or take it out; if another name was meant for it, spell both alike")],
            });
        }
    }
}
