using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Publishing;

namespace ScoreRules.Report.Views;

/// <summary>The rules of a house by the sections of its authors, each with its text and an anchor that every trail points to.</summary>
public sealed class RuleBook
{
    private readonly Dictionary<StatementInfo, string> anchors = new(ReferenceEqualityComparer.Instance);

    /// <summary>Arranges the rules.</summary>
    public RuleBook(Judgement judgement, PlaceNames places)
    {
        var ruleset = judgement.Ruleset;
        var order = new ReadingOrder(ruleset.House?.Info.Location.Path);
        var statements = ruleset.Criteria.Concat<BoundStatement>(ruleset.Weights).Concat(ruleset.Calls).Concat(ruleset.Recipes).Concat(ruleset.Awards).Concat(ruleset.CancelOuts)
            .Concat(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Places).Concat(ruleset.Cautions)
            .OrderBy(statement => statement.Info.Location, order).ToList();
        var entries = statements.Select((statement, i) => Entry(statement, "r" + i.ToString(CultureInfo.InvariantCulture), judgement.Inferred, places)).ToList();
        foreach (var entry in entries)
        {
            anchors.TryAdd(entry.Statement.Info, entry.Id);
        }

        Sections = [.. ruleset.Philosophy.OrderBy(prose => prose.Location, order).Select(prose => (prose.Location.Path, prose.Section)).Concat(entries.Select(entry => (entry.Statement.Info.Location.Path, entry.Statement.Info.Section)))
            .Distinct().Select(key => new RuleSection(
                key.Section ?? "Before the first section",
                [.. ruleset.Philosophy.Where(prose => (prose.Location.Path, prose.Section) == key).Select(prose => prose.Text)],
                [.. entries.Where(entry => (entry.Statement.Info.Location.Path, entry.Statement.Info.Section) == key)]))];
    }

    /// <summary>The sections: those of the house itself first, what all houses share last.</summary>
    public ImmutableArray<RuleSection> Sections { get; }

    /// <summary>The anchor of a rule; null for one that is not listed.</summary>
    public string? Anchor(StatementInfo info) => anchors.GetValueOrDefault(info);

    private static RuleEntry Entry(BoundStatement statement, string id, InferenceResult? inferred, PlaceNames places) =>
        new(statement, id, Lines(statement.Info.Location), places.Of(statement.Info.Location))
        {
            Amended = places.Shorten(AmendmentText.Behind(statement.Info).Trim()),
            Touches = statement is ConditionalStatement or CallDefinition && inferred is not null ? inferred.Outcome(statement).Effective.Count : null,
        };

    // A statement goes on as long as lines are set in.
    private static string Lines(SourceLocation location)
    {
        var source = location.Source;
        var last = location.Line;
        while (last < source.LineCount && source.Slice(source.LineSpan(last + 1)) is [' ' or '\t', ..] next && !string.IsNullOrWhiteSpace(next))
        {
            last++;
        }

        return string.Join('\n', Enumerable.Range(location.Line, last - location.Line + 1).Select(line => source.Slice(source.LineSpan(line)).TrimEnd()));
    }
}
