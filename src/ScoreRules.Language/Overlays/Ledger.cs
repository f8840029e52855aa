using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Keeps account of all that is changed and dropped, and of which statements it touched.</summary>
internal sealed class Ledger
{
    private readonly Dictionary<StatementSyntax, ImmutableArray<Amendment>> touched = new(ReferenceEqualityComparer.Instance);
    private readonly List<Amendment> all = [];

    /// <summary>The houses below, the base of all first.</summary>
    public ImmutableArray<BaseHouse> Bases { get; set; } = [];

    /// <summary>Names taken away.</summary>
    public DroppedNames Dropped { get; } = new();

    /// <summary>Changes and drops that are not in force on the day of the ranking.</summary>
    public List<StatementSyntax> NotInForce { get; } = [];

    /// <summary>New names of tiers in changes that were refused, so that their uses are not reported as well.</summary>
    public List<string> DoubtfulTiers { get; } = [];

    /// <summary>Notes the new names of tiers in lines that were refused.</summary>
    public void Doubt(IEnumerable<ClauseSyntax<ChangedTierSyntax>> refused) => DoubtfulTiers.AddRange(refused.Select(line => line.Content.NewName?.Text).OfType<string>());

    /// <summary>All amendments, in the order of their places.</summary>
    public ImmutableArray<Amendment> All => [.. all.OrderBy(amendment => amendment.Place.Source.Floor).ThenBy(amendment => amendment.Place, Comparer<SourceLocation>.Create(SourceLocation.Compare))];

    /// <summary>What was done to a statement.</summary>
    public ImmutableArray<Amendment> Of(StatementSyntax statement) => touched.GetValueOrDefault(statement, []);

    /// <summary>Notes that one statement takes the place of another.</summary>
    public void Replace(StatementSyntax before, StatementSyntax after)
    {
        if (touched.TryGetValue(before, out var done))
        {
            touched[after] = done;
        }
    }

    /// <summary>Enters an amendment.</summary>
    /// <param name="amendment">The amendment.</param>
    /// <param name="after">The statement as it is now; null when it was dropped.</param>
    public void Enter(Amendment amendment, StatementSyntax? after)
    {
        all.Add(amendment);
        if (after is not null)
        {
            touched[after] = [.. Of(after), amendment];
        }
    }
}
