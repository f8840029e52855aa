using System.Collections.Immutable;
using Humanizer;
using ScoreRules.Answers.Change;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Answers;

/// <summary>Changes of facts in words.</summary>
internal static class ChangeWords
{
    /// <summary>How changes are searched, and which a gym can arrange.</summary>
    public static ImmutableArray<string> Notes { get; } =
    [
        "Each change was put in and the house judged again, so that limits and called facts count. Every rating step was tried, the numbers where a rule bends and finer lines between them, and every word of a list: alone, in pairs, then three together.",
        $"\"The gym can do that\" means {FactText.Join(Arrangeable.Names)}. All else belongs to the movement: another fact is another movement.",
    ];

    /// <summary>One line for each set of changes, smallest first, and what was not found.</summary>
    /// <param name="found">The changes.</param>
    /// <param name="otherwise">Said when nothing does it.</param>
    public static IEnumerable<AnswerLine> Lines(ChangesFound found, string otherwise)
    {
        if (!found.All.Any())
        {
            yield return AnswerLine.Of("None", otherwise);
        }

        foreach (var line in Block("One change", found.Singles, 0).Concat(Block("Two together", found.Pairs, found.MorePairs)).Concat(Block("Three together", found.Triples, found.MoreTriples)))
        {
            yield return line;
        }

        if (found.Refused > 0)
        {
            yield return AnswerLine.Of("Cannot be", $"{"other set".ToQuantity(found.Refused)} of changes would do it, but the facts would contradict one another");
        }

        yield return AnswerLine.Of("Tried", Tried(found), new FiguresPart { Count = found.Tried });
    }

    private static string Tried(ChangesFound found) =>
        $"{"set".ToQuantity(found.Tried, "N0", System.Globalization.CultureInfo.InvariantCulture)} of changes{(found.IsBounded ? "; there are more of two or three, of which the smallest were tried" : ", which is all there are of one, two or three")}";

    private static IEnumerable<AnswerLine> Block(string label, ImmutableArray<Supposed> sets, int more)
    {
        for (var i = 0; i < sets.Length; i++)
        {
            yield return AnswerLine.Of(i == 0 ? label : "", Sentence(sets[i]), Figures(sets[i]));
        }

        if (more > 0)
        {
            yield return AnswerLine.Of("", $"and {NumberText.Count(more)} more, of larger or equal changes", new FiguresPart { Count = more });
        }
    }

    private static string Sentence(Supposed supposed)
    {
        var gym = supposed.GymCanChange ? " The gym can do that." : "";
        return $"{FactText.Join(supposed.Changes.Select(Change))}: {Then(supposed)}.{gym}";
    }

    private static string Then(Supposed supposed) => supposed.Placement is { } placement
        ? $"then {placement.Tier.Name}, {NumberText.Points(placement.Score)} points"
        : "then it is left out";

    private static string Change(FactChange change) => change.Attribute.Kind == AttributeKind.SomeOf && change.From.Value.IsKnown
        ? Lists(change)
        : $"{change.Attribute.Name} {FactText.Value(change.Attribute, change.To)} instead of {FactText.Value(change.Attribute, change.From.Value)}";

    private static string Lists(FactChange change)
    {
        var (added, taken) = (Words(change.To.Codes, change.From.Value.Codes, change.Attribute), Words(change.From.Value.Codes, change.To.Codes, change.Attribute));
        return (added, taken) switch
        {
            ("", _) => $"{change.Attribute.Name} without {taken}",
            (_, "") => $"{change.Attribute.Name} with {added} too",
            _ => $"{change.Attribute.Name} with {added} instead of {taken}",
        };
    }

    private static string Words(ImmutableArray<int> codes, ImmutableArray<int> others, AttributeDefinition attribute) =>
        codes.All(others.Contains) ? "" : FactText.Join(codes.Except(others).Select(code => attribute.Values[code]));

    private static FiguresPart Figures(Supposed supposed) => new()
    {
        Movement = supposed.Row.Movement.Name,
        Tier = supposed.Placement?.Tier.Name,
        Points = supposed.Placement?.Score,
        Changes = [.. supposed.Changes.Select(change => new SupposedPart(change.Attribute.Name, FactText.Value(change.Attribute, change.From.Value), FactText.Value(change.Attribute, change.To), change.GymCanChange))],
    };
}
