using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>The facts of all placement rows as columns, one for each attribute, made when first asked for.</summary>
public sealed class FactTable
{
    private readonly double[]?[] numbers;
    private readonly RowSet?[] known;
    private readonly RowSet?[]?[] words;
    private readonly double[]?[] workedOut;
    private readonly FactTableInputs inputs;

    private FactTable(BoundRuleset ruleset, ImmutableArray<PlacementRow> rows, FactTableInputs inputs)
    {
        Rows = rows;
        this.inputs = inputs;
        numbers = new double[]?[ruleset.Attributes.Length];
        known = new RowSet?[ruleset.Attributes.Length];
        words = new RowSet?[]?[ruleset.Attributes.Length];
        workedOut = new double[]?[ruleset.Attributes.Length];
        if (ruleset.Attributes.FirstOrDefault(attribute => attribute.Name == WellKnownAttributes.Likeness) is { } likeness)
        {
            workedOut[likeness.Index] = inputs.Likeness;
        }
    }

    /// <summary>The rows.</summary>
    public ImmutableArray<PlacementRow> Rows { get; }

    /// <summary>How many rows there are.</summary>
    public int RowCount => Rows.Length;

    /// <summary>Prepares the columns.</summary>
    public static FactTable Build(BoundRuleset ruleset, ImmutableArray<PlacementRow> rows, FactTableInputs inputs) => new(ruleset, rows, inputs);

    /// <summary>A number column; NaN where unknown.</summary>
    public double[] Numbers(AttributeDefinition attribute) =>
        workedOut[attribute.Index] ?? (numbers[attribute.Index] ??= attribute.IsWorkedOut ? Unknown() : [.. Rows.Select(row => row.Movement.Facts[attribute.Index].Value is { IsKnown: true } value && double.IsFinite(value.Number) ? value.Number : double.NaN)]);

    /// <summary>Rows for which an attribute is known.</summary>
    public RowSet Known(AttributeDefinition attribute) => known[attribute.Index] ??= attribute.IsAboutThePerson
        ? RowSet.All(RowCount)
        : attribute.IsWorkedOut || !attribute.IsWord
            ? RowSet.Where(RowCount, row => !double.IsNaN(Numbers(attribute)[row]))
            : RowSet.Where(RowCount, row => Rows[row].Movement.Facts[attribute.Index].Value.IsKnown);

    /// <summary>Rows whose value holds a word, by its code.</summary>
    public RowSet WithWord(AttributeDefinition attribute, int code)
    {
        if ((uint)code >= (uint)attribute.Values.Length)
        {
            return RowSet.None(RowCount);
        }

        var columns = words[attribute.Index] ??= new RowSet?[attribute.Values.Length];
        return columns[code] ??= attribute.IsAboutThePerson
            ? inputs.Audience.Contains(code) ? RowSet.All(RowCount) : RowSet.None(RowCount)
            : RowSet.Where(RowCount, row => Rows[row].Movement.Facts[attribute.Index].Value.Codes.Contains(code));
    }

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
        var origin = ReferenceEquals(workedOut[attribute.Index], inputs.Likeness) ? FactOrigin.Computed : FactOrigin.WorkedOut;
        return double.IsNaN(number) ? CatalogueFact.NotSaid : new CatalogueFact(FactValue.Of(number), origin, null, attribute.Info.Location);
    }

    /// <summary>Puts in a column that a recipe worked out; NaN where unknown.</summary>
    internal void SetWorkedOut(AttributeDefinition attribute, double[] column)
    {
        workedOut[attribute.Index] = column;
        numbers[attribute.Index] = null;
        known[attribute.Index] = null;
    }

    private double[] Unknown()
    {
        var column = new double[RowCount];
        Array.Fill(column, double.NaN);
        return column;
    }
}
