using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>The statements of the houses so far. A statement that was changed stands where the first form of it stood.</summary>
internal sealed class StatementList
{
    private readonly List<StatementSyntax> first = [];
    private readonly Dictionary<StatementSyntax, StatementSyntax?> now = new(ReferenceEqualityComparer.Instance);

    /// <summary>Keys of the tiers, best first.</summary>
    public IReadOnlyList<string> Tiers => [.. ToList().Where(statement => statement.Spec == VocabularyGrammar.Tiers).SelectMany(statement => statement.All(VocabularyGrammar.Tier)).Select(line => line.Content.Name.Key)];

    /// <summary>Adds a statement.</summary>
    public void Add(StatementSyntax statement) => first.Add(statement);

    /// <summary>What a statement is now, given the form it had when it was looked up.</summary>
    public StatementSyntax Now(StatementSyntax statement) => now.GetValueOrDefault(statement) ?? statement;

    /// <summary>Puts a new form in place of a statement.</summary>
    public void Replace(StatementSyntax statement, StatementSyntax after) => now[statement] = after;

    /// <summary>Puts a new form in place of every statement for which there is one.</summary>
    public void ReplaceAll(Func<StatementSyntax, StatementSyntax?> change, Ledger ledger)
    {
        foreach (var statement in first)
        {
            if ((!now.TryGetValue(statement, out var latest) || latest is not null) && change(latest ?? statement) is { } after)
            {
                ledger.Replace(latest ?? statement, after);
                now[statement] = after;
            }
        }
    }

    /// <summary>Takes a statement out.</summary>
    public void Remove(StatementSyntax statement) => now[statement] = null;

    /// <summary>The statements as they are now.</summary>
    public List<StatementSyntax> ToList() =>
        [.. first.Select(statement => now.TryGetValue(statement, out var after) ? after : statement).OfType<StatementSyntax>()];

    /// <summary>The statements as they are now, which from here on are the forms to look up.</summary>
    public List<StatementSyntax> Settle()
    {
        var latest = ToList();
        first.Clear();
        first.AddRange(latest);
        now.Clear();
        return latest;
    }
}
