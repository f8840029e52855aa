using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>
/// The facts of a ranking by column: rows are placements, columns are attributes. A column is made when it is first asked
/// for and then kept. Not for use by several threads at once.
/// </summary>
public sealed class FactTable
{
    private readonly FactColumns columns;
    private readonly ImmutableDictionary<int, NumberColumn> workedOut;

    private FactTable(FactColumns columns, ImmutableDictionary<int, NumberColumn> workedOut)
    {
        this.columns = columns;
        this.workedOut = workedOut;
    }

    /// <summary>The rows; a row's index is its position.</summary>
    public ImmutableArray<PlacementRow> Rows => columns.Facts.Rows;

    /// <summary>Number of rows.</summary>
    public int RowCount => Rows.Length;

    /// <summary>Targets of the house, with or without rows.</summary>
    public ImmutableArray<TargetDefinition> Targets { get; private init; } = [];

    /// <summary>Every row.</summary>
    public RowSet All => columns.All;

    /// <summary>The target of each row, by its index.</summary>
    internal int[] TargetOfRow => columns.TargetOfRow;

    /// <summary>Makes the table of a ranking.</summary>
    /// <param name="ruleset">The house, for its attributes and targets.</param>
    /// <param name="rows">The rows, each at the position that its index says.</param>
    /// <param name="inputs">What is known beside the catalogue.</param>
    public static FactTable Build(BoundRuleset ruleset, ImmutableArray<PlacementRow> rows, FactTableInputs inputs)
    {
        if (inputs.Likeness is { } likeness && likeness.Count != rows.Length)
        {
            throw new ArgumentException("Likeness needs one number for each row.", nameof(inputs));
        }

        var person = ruleset.Attributes.FirstOrDefault(attribute => attribute is { IsAboutThePerson: true, IsWord: true })?.Index;
        var alike = ruleset.Attributes.FirstOrDefault(attribute => NameText.Same(attribute.Name, WellKnownAttributes.Likeness))?.Index;
        return new FactTable(new FactColumns(new RowFacts(rows, inputs, person, alike)), ImmutableDictionary<int, NumberColumn>.Empty) { Targets = ruleset.Targets };
    }

    /// <summary>The numbers of an attribute; all unknown for one that is told in words.</summary>
    public NumberColumn Numbers(AttributeDefinition attribute) => workedOut.GetValueOrDefault(attribute.Index) ?? columns.Numbers(attribute);

    /// <summary>The words of an attribute; for one that is told in numbers, no row has a word.</summary>
    public WordColumn Words(AttributeDefinition attribute) => columns.Words(attribute);

    /// <summary>Rows for which an attribute is known.</summary>
    public RowSet Known(AttributeDefinition attribute) => attribute.IsWord ? Words(attribute).Known : Numbers(attribute).Known;

    /// <summary>A fact with where it comes from.</summary>
    public CatalogueFact Fact(int row, AttributeDefinition attribute)
    {
        if (!workedOut.TryGetValue(attribute.Index, out var column))
        {
            return columns.Facts.Fact(row, attribute);
        }

        var value = double.IsNaN(column[row]) ? FactValue.Unknown : FactValue.Of(column[row]);
        return new CatalogueFact(value, FactOrigin.WorkedOut, null, attribute.Info.Location);
    }

    /// <summary>The same table with the numbers that a recipe worked out; columns made so far are shared.</summary>
    public FactTable WithColumn(AttributeDefinition attribute, NumberColumn column) =>
        new(columns, workedOut.SetItem(attribute.Index, column)) { Targets = Targets };
}
