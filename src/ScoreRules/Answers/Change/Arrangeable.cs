using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Answers.Change;

/// <summary>Which facts a gym can arrange: kit, and how the movement is set up. All others belong to the movement itself. Common practice, no source.</summary>
public static class Arrangeable
{
    /// <summary>Names of the attributes.</summary>
    public static ImmutableArray<string> Names { get; } =
        ["equipment", "set-up", "smallest step", "loadability", "external support", "support", "body position", "handle", "grip", "wrist tolerance", "laterality"];

    /// <summary>Whether a gym can arrange a fact.</summary>
    public static bool Contains(AttributeDefinition attribute) => Names.Any(name => NameText.Same(name, attribute.Name));
}
