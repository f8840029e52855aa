namespace ScoreRules.Publishing.Vocabulary;

/// <summary>Words for a terminal, a heading for each kind.</summary>
public static class WordsText
{
    private const int NameIndent = 2;
    private const int Indent = 6;

    /// <summary>The words given.</summary>
    public static string Print(IReadOnlyCollection<WordEntry> entries)
    {
        var block = new TextBlock();
        var first = true;
        foreach (var kind in entries.GroupBy(entry => entry.Kind))
        {
            if (!first)
            {
                block.Blank();
            }

            first = false;
            block.Line(Heading(kind.Key));
            foreach (var entry in kind)
            {
                Print(block, entry);
            }
        }

        return block.ToString();
    }

    /// <summary>What the words of a kind are headed.</summary>
    internal static string Heading(WordKind kind) => kind switch
    {
        WordKind.Attribute => "Attributes: what can be said of a movement, or of a person",
        WordKind.DerivedFact => "Derived facts: what mechanics works out from joints and load; rules may read them, no movement states them",
        WordKind.Kit => "Kit",
        WordKind.Muscle => "Muscles",
        WordKind.Target => "Targets",
        WordKind.Tier => "Tiers",
        WordKind.Word => "Words of the house",
        WordKind.CalledFact => "Called facts",
        _ => "Movements",
    };

    /// <summary>All that a word's name is followed by, without values and steps.</summary>
    internal static string Told(WordEntry entry) =>
        string.Join("; ", new[] { entry.Meaning, entry.Description, entry.Synonyms.IsEmpty ? null : $"also known as {string.Join(", ", entry.Synonyms)}" }.Where(part => !string.IsNullOrEmpty(part)));

    private static void Print(TextBlock block, WordEntry entry)
    {
        if (entry.Kind == WordKind.Kit)
        {
            block.Wrapped(entry.Name, NameIndent);
            return;
        }

        block.Line($"  {entry.Name}");
        if (Told(entry) is { Length: > 0 } told)
        {
            block.Wrapped(told, Indent);
        }

        foreach (var (step, text) in entry.Steps)
        {
            block.Labelled($"      {NumberText.Plain(step)}", text, Indent + NumberText.Plain(step).Length + 2);
        }

        if (!entry.Values.IsEmpty)
        {
            block.Wrapped($"{(entry.Kind == WordKind.Target ? "made of" : "values:")} {string.Join(", ", entry.Values)}", Indent);
        }
    }
}
