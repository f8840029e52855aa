using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>
/// Two names of one kind that one slip of the pen turns into each other, so that neither the reader nor the program could
/// tell a slip from a thought. Movements are asked for a letter only: "push-up" and "deficit push-up" are the trade's names.
/// </summary>
internal static class NearNames
{
    private const int ShortestForLetter = 5;
    private const int LongestName = 80;
    private const int MostAlike = 20;

    /// <summary>Reports such pairs among the names that a house declares.</summary>
    public static void Report(BindContext context)
    {
        Report(context, context.CalledFacts, words: true);
        Report(context, context.Words, words: true);
        Report(context, context.Criteria, words: true);
        Report(context, context.Rules, words: true);
        Report(context, context.Tiers, words: true);
        Report(context, context.Targets, words: false);
        Report(context, context.Attributes, words: true);
        foreach (var attribute in context.Attributes.Names.Select(name => context.Attributes.TryFind(name)!).Where(attribute => attribute.Kind is AttributeKind.OneOf or AttributeKind.SomeOf))
        {
            ReportValues(context, attribute);
        }
    }

    /// <summary>Whether one of two names is the other without one word, or (in longer names) with one letter changed, lost, added or two exchanged.</summary>
    internal static bool AreNear(string left, string right, bool words)
    {
        var (one, other) = (NameText.Key(left), NameText.Key(right));
        return (words && (LacksOneWord(one, other) || LacksOneWord(other, one)))
            || (Math.Min(one.Length, other.Length) >= ShortestForLetter && NameDistance.Between(one, other, 1) == 1);
    }

    private static bool LacksOneWord(string shorter, string longer)
    {
        var (few, many) = (shorter.Split(' '), longer.Split(' '));
        return many.Length == few.Length + 1 && Enumerable.Range(0, many.Length).Any(left => many.Where((_, at) => at != left).SequenceEqual(few, StringComparer.Ordinal));
    }

    private static void Report<T>(BindContext context, NameTable<T> table, bool words)
        where T : class
    {
        var names = table.Names;
        foreach (var (first, second) in Pairs(names, words))
        {
            var (before, place) = (table.LocationOf(first)!, table.LocationOf(second)!);
            if (before.Source.IsOwn || place.Source.IsOwn)
            {
                Add(context, first, second, place, before);
            }
        }
    }

    private static void ReportValues(BindContext context, AttributeDefinition attribute)
    {
        if (!attribute.Info.Location.Source.IsOwn)
        {
            return;
        }

        foreach (var (first, second) in Pairs(attribute.Values, words: true))
        {
            Add(context, first, second, attribute.Info.Location, null);
        }
    }

    // Two near names share a form with a word or a letter left out, so that not every name need be held against every other.
    private static IEnumerable<(string First, string Second)> Pairs(IReadOnlyList<string> names, bool words)
    {
        var byForm = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        for (var second = 0; second < names.Count; second++)
        {
            var met = new SortedSet<int>();
            foreach (var form in Forms(NameText.Key(names[second])))
            {
                var sharing = byForm.TryGetValue(form, out var known) ? known : byForm[form] = [];
                met.UnionWith(sharing.Take(MostAlike));
                sharing.Add(second);
            }

            foreach (var first in met.Where(first => AreNear(names[first], names[second], words)))
            {
                yield return (names[first], names[second]);
            }
        }
    }

    private static HashSet<string> Forms(string key)
    {
        var parts = key.Split(' ');
        var forms = new HashSet<string>(StringComparer.Ordinal) { key };
        forms.UnionWith(parts.Select((_, left) => string.Join(' ', parts.Where((_, at) => at != left))));
        forms.UnionWith(Enumerable.Range(0, Math.Min(key.Length, LongestName)).Select(left => key.Remove(left, 1)));
        return forms;
    }

    private static void Add(BindContext context, string first, string second, SourceLocation place, SourceLocation? before) =>
        context.Findings.Add(new Diagnostic("SR2010", Severity.Warning, $"\"{first}\" and \"{second}\" are one slip apart", new Label(place, "easily taken for the other"))
        {
            Others = before is { } other ? [new Label(other, "the other name")] : [],
            Suggestions = [new Suggestion("reword one of them, or join its words with a hyphen, so that a lost word or letter is seen")],
        });
}
