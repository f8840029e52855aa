using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue.Csv;

/// <summary>A column of a table.</summary>
/// <param name="Kind">What its cells say.</param>
/// <param name="Heading">Its heading.</param>
/// <param name="Attribute">The attribute of a fact column, else null.</param>
internal sealed record CsvColumn(ColumnKind Kind, CsvCell Heading, AttributeDefinition? Attribute = null);
