using System.Collections.Immutable;
using ScoreRules.Catalogue.Csv;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Fuzzing.Targets;

/// <summary>Any text can be read as a table of movements.</summary>
internal static class TableTarget
{
    private static readonly ImmutableArray<AttributeDefinition> Attributes = SharedTexts.Read().Attributes;
    private static readonly ImmutableArray<TargetDefinition> Targets = SharedTexts.Read().Targets;

    /// <summary>Reads a text as a table.</summary>
    public static void Run(string text)
    {
        var findings = new DiagnosticBag();
        CsvCatalogueReader.Read("any.csv", text, Attributes, Targets, findings);
        Promises.Keep(findings.ToSorted());
    }
}
