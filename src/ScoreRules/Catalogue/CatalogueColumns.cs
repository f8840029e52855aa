using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>What the catalogue says about all placement rows, as columns; each is read when first asked for and then kept.</summary>
/// <param name="rows">The rows.</param>
/// <param name="attributeCount">How many attributes there are.</param>
internal sealed class CatalogueColumns(ImmutableArray<PlacementRow> rows, int attributeCount)
{
    private readonly NumberColumn?[] numbers = new NumberColumn?[attributeCount];
    private readonly WordColumn?[] words = new WordColumn?[attributeCount];
    private ILookup<string, int>? rowsByName;

    /// <summary>The rows.</summary>
    public ImmutableArray<PlacementRow> Rows { get; } = rows;

    /// <summary>Index of the target, by row.</summary>
    public int[] Targets { get; } = [.. rows.Select(row => row.Target.Index)];

    /// <summary>The rows of a movement, by its name.</summary>
    public IEnumerable<int> RowsOf(string movement)
    {
        rowsByName ??= Rows.ToLookup(row => NameText.Key(row.Movement.Name), row => row.Index, StringComparer.Ordinal);
        return rowsByName[NameText.Key(movement)];
    }

    /// <summary>The numbers of an attribute.</summary>
    public NumberColumn Numbers(AttributeDefinition attribute) => numbers[attribute.Index] ??= ReadNumbers(attribute.Index);

    /// <summary>The words of an attribute.</summary>
    public WordColumn Words(AttributeDefinition attribute) => words[attribute.Index] ??= WordColumn.Read(Rows, attribute.Index, attribute.Values.Length);

    private NumberColumn ReadNumbers(int attribute)
    {
        var values = new double[Rows.Length];
        for (var row = 0; row < values.Length; row++)
        {
            var value = Rows[row].Movement.Facts[attribute].Value;
            values[row] = value.IsKnown ? value.Number : double.NaN;
        }

        return new NumberColumn(values);
    }
}
