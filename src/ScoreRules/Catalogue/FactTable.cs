using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>
/// The facts of all placement rows as columns, one for each attribute. Columns of the catalogue are read when first asked
/// for and shared by all runs over it; columns that recipes work out belong to one run.
/// </summary>
public sealed class FactTable
{
    private readonly CatalogueColumns columns;
    private readonly NumberColumn?[] workedOut;
    private readonly FactTableInputs inputs;
    private readonly WordColumn?[] person;
    private NumberColumn? unknown;

    private FactTable(CatalogueColumns columns, int attributeCount, FactTableInputs inputs)
    {
        this.columns = columns;
        this.inputs = inputs;
        workedOut = new NumberColumn?[attributeCount];
        person = new WordColumn?[attributeCount];
        workedOut[^1] = inputs.Likeness is null ? null : new NumberColumn(inputs.Likeness);
    }

    /// <summary>The rows.</summary>
    public ImmutableArray<PlacementRow> Rows => columns.Rows;

    /// <summary>How many rows there are.</summary>
    public int RowCount => Rows.Length;

    /// <summary>Index of the target, by row.</summary>
    internal int[] Targets => columns.Targets;

    /// <summary>The rows of a movement, by its name.</summary>
    internal IEnumerable<int> RowsOf(string movement) => columns.RowsOf(movement);

    /// <summary>Prepares the columns. The last attribute of a ruleset is the built-in likeness.</summary>
    public static FactTable Build(BoundRuleset ruleset, ImmutableArray<PlacementRow> rows, FactTableInputs inputs) =>
        new(new CatalogueColumns(rows, ruleset.Attributes.Length), ruleset.Attributes.Length, inputs);

    /// <summary>A number column; NaN where unknown.</summary>
    public double[] Numbers(AttributeDefinition attribute) => NumberColumn(attribute).Values;

    /// <summary>Rows for which an attribute is known.</summary>
    public RowSet Known(AttributeDefinition attribute) => attribute.IsAboutThePerson || (attribute.IsWord && !attribute.IsWorkedOut)
        ? WordColumn(attribute).Known
        : NumberColumn(attribute).Known;

    /// <summary>Rows whose value holds a word, by its code.</summary>
    public RowSet WithWord(AttributeDefinition attribute, int code) => WordColumn(attribute).With(code);

    /// <summary>One fact with where it comes from.</summary>
    public CatalogueFact Fact(int row, AttributeDefinition attribute)
    {
        if (attribute.IsAboutThePerson)
        {
            return new CatalogueFact(FactValue.Of(inputs.Audience), FactOrigin.Profile, null, null);
        }

        if (!attribute.IsWorkedOut)
        {
            return Rows[row].Movement.Facts[attribute.Index];
        }

        var number = Numbers(attribute)[row];
        var origin = ReferenceEquals(Numbers(attribute), inputs.Likeness) ? FactOrigin.Computed : FactOrigin.WorkedOut;
        return double.IsNaN(number) ? CatalogueFact.NotSaid : new CatalogueFact(FactValue.Of(number), origin, null, attribute.Info.Location);
    }

    /// <summary>A table on the same columns of the catalogue, without anything worked out: what a new run starts from.</summary>
    internal FactTable WithNothingWorkedOut() => new(columns, workedOut.Length, inputs);

    /// <summary>The numbers of an attribute with what follows from them.</summary>
    internal NumberColumn NumberColumn(AttributeDefinition attribute) => workedOut[attribute.Index]
        ?? (attribute.IsWorkedOut ? unknown ??= Catalogue.NumberColumn.Unknown(RowCount) : columns.Numbers(attribute));

    /// <summary>The words of an attribute with what follows from them.</summary>
    internal WordColumn WordColumn(AttributeDefinition attribute) => attribute.IsAboutThePerson
        ? person[attribute.Index] ??= Catalogue.WordColumn.Everywhere(RowCount, inputs.Audience, attribute.Values.Length)
        : columns.Words(attribute);

    /// <summary>Puts in a column that a recipe worked out; NaN where unknown.</summary>
    internal void SetWorkedOut(AttributeDefinition attribute, double[] column) => workedOut[attribute.Index] = new NumberColumn(column);
}
