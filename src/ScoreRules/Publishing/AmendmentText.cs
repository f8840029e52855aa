using Humanizer;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Overlays;

namespace ScoreRules.Publishing;

/// <summary>What a house changed of the houses it builds on, in words: what it says now, what stood there, and where both stand.</summary>
public static class AmendmentText
{
    private const string Expectation = "expectation";
    private const int MostTitles = 6;

    /// <summary>All changes and drops, one paragraph each; empty for a house that builds on no other.</summary>
    public static string Print(BoundRuleset ruleset)
    {
        var block = new TextBlock();
        foreach (var amendment in ruleset.Amendments)
        {
            block.Labelled("", $"- {Sentence(amendment)}", 2);
        }

        return block.ToString();
    }

    /// <summary>One line for a ranking: the houses below, and how much was changed.</summary>
    internal static string? Summary(BoundRuleset ruleset)
    {
        if (ruleset.Bases.IsEmpty)
        {
            return null;
        }

        var houses = string.Join(", which builds on ", ruleset.Bases.Reverse().Select(house => $"{house.Name}, version {house.Version}"));
        var expectations = ruleset.Amendments.Count(amendment => amendment.Kind == Expectation);
        var fewer = expectations == 0 ? "" : $", and {Expectation.ToQuantity(expectations)} that cannot hold here";
        return $"{houses}. Changed: {Titles(ruleset, AmendmentAction.Changed)}. Dropped: {Titles(ruleset, AmendmentAction.Dropped)}{fewer}. scorerules check HOUSE shows each beside what stood there.";
    }

    /// <summary>What was done to a statement, to be printed behind its place; empty when nothing was.</summary>
    internal static string Behind(StatementInfo info) =>
        info.Amendments.IsEmpty ? "" : " " + string.Join(" ", info.Amendments.Select(amendment => Capital($"{Change(amendment)}.")));

    private static string Sentence(Amendment amendment)
    {
        var because = amendment.Because is { } words ? $" \"{Sentences.Sentence(words)}\"" : "";
        return amendment.Action == AmendmentAction.Dropped
            ? $"{amendment.Title} of {amendment.BaseHouse} ({amendment.BasePlace}) is dropped ({amendment.Place}).{because}"
            : $"{amendment.Title} of {amendment.BaseHouse}: {Change(amendment)}.{because}";
    }

    private static string Change(Amendment amendment) => $"{amendment.House} says {string.Join("; ", amendment.Lines.Select(Line))}";

    private static string Line(AmendedLine line) => line.OldText is null
        ? $"\"{line.NewText}\" ({line.New}), added"
        : $"\"{line.NewText}\" ({line.New}) where {line.OldHouse} says \"{line.OldText}\" ({line.Old})";

    private static string Titles(BoundRuleset ruleset, AmendmentAction action)
    {
        var titles = ruleset.Amendments.Where(amendment => amendment.Action == action && amendment.Kind != Expectation).Select(amendment => amendment.Title).ToList();
        return titles.Count == 0 ? "nothing" : $"{string.Join(", ", titles.Take(MostTitles))}{(titles.Count > MostTitles ? $" and {NumberText.Count(titles.Count - MostTitles)} more" : "")}";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
