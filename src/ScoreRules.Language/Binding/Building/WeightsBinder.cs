using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds weights by order and by comparison.</summary>
internal sealed class WeightsBinder(BindContext context, InfoBinder info)
{
    private readonly Dictionary<(string, string), ClauseSyntax<ImportanceSyntax>> compared = [];

    /// <summary>All statements about weights whose parts could be bound.</summary>
    public ImmutableArray<WeightsDefinition> Bind(IEnumerable<StatementSyntax> statements) =>
        [.. statements.Where(statement => statement.Spec == ScoringGrammar.Weights && statement.First is not null).Select(BindOne).OfType<WeightsDefinition>()];

    private WeightsDefinition? BindOne(StatementSyntax statement)
    {
        compared.Clear();
        var order = statement.All(ScoringGrammar.Order).SelectMany(line => line.Content).ToList();
        var mentions = order.Select(name => Mention(name, statement)).ToList();
        var comparisons = statement.All(ScoringGrammar.Importance).Select(line => Compare(line, statement)).ToList();
        var sound = AllDiffer(order, statement) && IsOneKind(statement);
        var said = info.Bind(statement);
        var hasTargets = HasTargets(said, statement);
        return sound && hasTargets && mentions.Count + comparisons.Count > 0 && !mentions.Contains(null) && !comparisons.Contains(null) ? new WeightsDefinition(said, [.. mentions!], [.. comparisons!]) : null;
    }

    // Weights of one movement against another would compare scores of two scales.
    private bool HasTargets(StatementInfo said, StatementSyntax statement)
    {
        var movements = said.OnlyFor.Concat(said.ExceptFor).Where(entry => entry.Movement is not null).ToList();
        foreach (var entry in movements)
        {
            context.Report("SR5022", Severity.Error, $"\"{entry.Movement}\" is a movement, and weights hold for whole targets", statement, entry.Location, "a target stands here", [],
                new Suggestion("name a target; what is different about one movement is said with \"give\", \"take\" or \"except for\" on the criterion"));
        }

        return movements.Count == 0;
    }

    private CriterionMention? Mention(NameSyntax name, StatementSyntax statement) =>
        context.Criteria.Find(name, statement) is { } criterion ? new CriterionMention(criterion.Text, statement.At(name.Span)) : null;

    private bool AllDiffer(List<NameSyntax> order, StatementSyntax statement)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var twice = order.Find(name => !seen.Add(name.Key));
        if (twice is not null)
        {
            context.Error("SR3007", $"\"{twice.Text}\" stands twice in this list", statement, twice.Span, "second time", new Suggestion("keep one of the two places"));
        }

        return twice is null;
    }

    private bool IsOneKind(StatementSyntax statement)
    {
        if (statement.Find(ScoringGrammar.Order) is not { } order || statement.Find(ScoringGrammar.Importance) is not { } comparison)
        {
            return true;
        }

        context.Report("SR5017", Severity.Error, "Weights are told by an order and by comparisons at once", statement, comparison.Span, "a comparison", [new Label(statement.At(order.Span), "an order")],
            new Suggestion("keep the order, or say every step of it as a comparison"));
        return false;
    }

    private ImportanceComparison? Compare(ClauseSyntax<ImportanceSyntax> line, StatementSyntax statement)
    {
        var (first, second) = (context.Criteria.Find(line.Content.First, statement), context.Criteria.Find(line.Content.Second, statement));
        var times = line.Content.Degree.Name is { } word ? Word(word, statement) : Number(line.Content.Degree.Value!, statement);
        if (first is null || second is null || times is null || !IsNew(line, statement))
        {
            return null;
        }

        return new ImportanceComparison(first.Text, second.Text, times.Value, line.Content.Degree.Name?.Text, statement.At(line.Span));
    }

    private bool IsNew(ClauseSyntax<ImportanceSyntax> line, StatementSyntax statement)
    {
        var (first, second) = (line.Content.First, line.Content.Second);
        if (first.Key == second.Key)
        {
            context.Error("SR3008", "A criterion is compared with itself", statement, second.Span, "the same criterion", new Suggestion("name another criterion"));
            return false;
        }

        var pair = string.CompareOrdinal(first.Key, second.Key) < 0 ? (first.Key, second.Key) : (second.Key, first.Key);
        if (compared.TryAdd(pair, line))
        {
            return true;
        }

        context.Report("SR5018", Severity.Error, $"\"{first.Text}\" and \"{second.Text}\" are compared twice", statement, line.Span, "second time", [new Label(statement.At(compared[pair].Span), "first time")], new Suggestion("keep one of the two"));
        return false;
    }

    private double? Number(ValueSyntax value, StatementSyntax statement)
    {
        if (value.Number > 0)
        {
            return value.Number;
        }

        context.Error("SR5003", "A criterion is compared by a number of times above 0", statement, value.Span, "not above 0", new Suggestion("write for example \"2 times as important as\"; 0.5 times is half as important"));
        return null;
    }

    private double? Word(NameSyntax name, StatementSyntax statement)
    {
        if (context.Words.Find(name, statement, $"how much more important is a number of times or a word of the house, such as \"say {name.Text} means 1.5 times as important\"") is not { } word)
        {
            return null;
        }

        if (word is { Unit: "times", Bound: SayBound.Exactly, Number: > 1 })
        {
            return word.Number;
        }

        context.Report("SR3003", Severity.Error, $"\"{name.Text}\" does not say how many times more important", statement, name.Span, "a word for more than 1 time stands here", [new Label(word.Info.Location, "defined here")],
            new Suggestion($"define a word such as \"say a little means 1.5 times as important\", or write a number of times"));
        return null;
    }
}
