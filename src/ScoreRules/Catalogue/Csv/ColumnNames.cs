using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>The headings that a table may have.</summary>
internal sealed class ColumnNames
{
    private static readonly (string Name, ColumnKind Kind, string[] Hints)[] Fixed =
    [
        ("movement", ColumnKind.Movement, ["name", "movement name", "exercise", "exercise name"]),
        ("also known as", ColumnKind.AlsoKnownAs, ["other names", "synonyms", "synonym", "aliases", "alias"]),
        ("trains", ColumnKind.Trains, ["target", "targets", "target group", "muscle group", "muscle groups"]),
        ("like", ColumnKind.Like, ["similar to", "same as", "based on"]),
        ("source", ColumnKind.Source, ["sources", "reference", "references"]),
        ("note", ColumnKind.Note, ["notes", "comment", "comments", "remark", "remarks"]),
    ];

    private readonly Dictionary<string, (ColumnKind Kind, AttributeDefinition? Attribute)> known = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> hints = new(StringComparer.Ordinal);
    private readonly List<string> usable = [];

    /// <summary>Learns the fixed headings and the house's attributes.</summary>
    public ColumnNames(IReadOnlyList<AttributeDefinition> attributes)
    {
        foreach (var (name, kind, words) in Fixed)
        {
            Add(name, kind, null, words);
        }

        foreach (var attribute in attributes)
        {
            Add(attribute.Name, ColumnKind.Fact, attribute, attribute.Synonyms);
        }
    }

    /// <summary>What a heading means; <see cref="ColumnKind.Unusable"/> for one that is not known.</summary>
    public (ColumnKind Kind, AttributeDefinition? Attribute) Find(string heading) =>
        known.GetValueOrDefault(NameText.Key(heading), (ColumnKind.Unusable, null));

    /// <summary>Headings that may have been meant, best first: a declared synonym before names that are spelt alike.</summary>
    public IReadOnlyList<string> Nearest(string heading) =>
        hints.TryGetValue(NameText.Key(heading), out var meant) ? [meant] : NameSuggester.Nearest(heading, usable);

    private void Add(string name, ColumnKind kind, AttributeDefinition? attribute, IEnumerable<string> words)
    {
        if (!known.TryAdd(NameText.Key(name), (kind, attribute)) || attribute is { IsWorkedOut: true } or { IsAboutThePerson: true })
        {
            return;
        }

        usable.Add(name);
        foreach (var word in words)
        {
            hints.TryAdd(NameText.Key(word), name);
        }
    }
}
