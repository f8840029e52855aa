using System.Collections.Immutable;
using ScoreRules.Catalogue.Csv;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Tests.Catalogue.Csv;

/// <summary>A table read in the small house, with its findings.</summary>
internal sealed record Table(ImmutableArray<MovementDeclaration> Movements, DiagnosticBag Findings)
{
    public static Table Read(string text)
    {
        var findings = new DiagnosticBag();
        return new Table(CsvCatalogueReader.Read("movements.csv", text, SmallHouse.Attributes, SmallHouse.Targets, findings), findings);
    }

    /// <summary>The value of a cell under one attribute, in a table of one row.</summary>
    public static FactValue? Cell(string attribute, string cell, char separator = ';') =>
        Read($"movement{separator}{attribute}\ncurl{separator}{cell}\n").Movements.Single().Facts.SingleOrDefault()?.Value;

    /// <summary>The findings about a cell under one attribute, in a table of one row.</summary>
    public static DiagnosticBag FindingsOf(string attribute, string cell, char separator = ';') =>
        Read($"movement{separator}{attribute}\ncurl{separator}{cell}\n").Findings;
}
