using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Reads the cells of attributes that take words.</summary>
internal static class WordReader
{
    /// <summary>The one word of a cell, or null when it is not allowed (which is reported).</summary>
    public static FactValue? ReadOne(AttributeDefinition attribute, CsvCell cell, RowReport report)
    {
        var code = CodeOf(attribute, cell, report);
        return code < 0 ? null : FactValue.Of([code]);
    }

    /// <summary>The words of a cell, or null when one is not allowed or stands twice (which is reported).</summary>
    public static FactValue? ReadSome(AttributeDefinition attribute, CsvCell cell, RowReport report)
    {
        if (CellWords.Says(cell, CellWords.Nothing))
        {
            return FactValue.Of(ImmutableArray<int>.Empty);
        }

        var codes = new SortedDictionary<int, CsvCell>();
        var isSound = true;
        foreach (var word in CellList.Split(cell))
        {
            var code = CodeOf(attribute, word, report);
            if (code >= 0 && !codes.TryAdd(code, word))
            {
                report.Add(ValueFindings.WordTwice(word, codes[code]));
                code = -1;
            }

            isSound &= code >= 0;
        }

        if (isSound && codes.Count == 0)
        {
            report.Add(ValueFindings.NoWord(cell, attribute));
        }

        return isSound && codes.Count > 0 ? FactValue.Of([.. codes.Keys]) : null;
    }

    /// <summary>The targets of a cell; names that are no target are reported.</summary>
    public static ImmutableArray<TargetDefinition> ReadTargets(IReadOnlyList<TargetDefinition> targets, CsvCell cell, RowReport report)
    {
        var found = new List<TargetDefinition>();
        foreach (var word in CellList.Split(cell))
        {
            var target = targets.FirstOrDefault(target => NameText.Same(target.Name, word.Text));
            if (target is null)
            {
                report.Add(ValueFindings.UnknownTarget(word, targets));
            }
            else if (!found.Contains(target))
            {
                found.Add(target);
            }
        }

        return [.. found];
    }

    private static int CodeOf(AttributeDefinition attribute, CsvCell word, RowReport report)
    {
        var code = attribute.CodeOf(word.Text);
        if (code < 0)
        {
            report.Add(ValueFindings.UnknownWord(word, attribute));
        }

        return code;
    }
}
