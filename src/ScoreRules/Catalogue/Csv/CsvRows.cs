using System.Collections.Immutable;
using nietras.SeparatedValues;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Cuts a table into rows and cells, each with its exact place. Blank rows are passed over.</summary>
internal sealed class CsvRows(SourceText source, char separator, DiagnosticBag findings)
{
    private const char ByteOrderMark = '\uFEFF';

    private readonly string text = source.Text;
    private bool isCutShort;

    /// <summary>All rows that are not blank, in order; faults in their quotes are reported.</summary>
    public IEnumerable<CsvRow> Read()
    {
        var at = text.StartsWith(ByteOrderMark) ? 1 : 0;
        using var reader = Begin(at);
        while (reader is not null && Advance(reader, at))
        {
            var (cells, length) = Cut(reader.Current, at);
            var row = new CsvRow(ToCells(cells), new SourceSpan(at, length));
            if (!row.IsBlank)
            {
                yield return row;
            }

            at = BehindLineEnd(at + length);
        }

        if (isCutShort)
        {
            yield return new CsvRow([], new SourceSpan(at, 0));
        }
    }

    // Sep is asked to leave cells as they stand: what it hands out are then neighbouring slices of the text.
    private SepReader? Begin(int at)
    {
        try
        {
            return new Sep(separator)
                .Reader(options => options with { HasHeader = false, DisableColCountCheck = true, Unescape = false, Trim = SepTrim.None })
                .FromText(at == 0 ? text : text[at..]);
        }
        catch (NotSupportedException)
        {
            CutShort(at);
            return null;
        }
    }

    private bool Advance(SepReader reader, int at)
    {
        try
        {
            return reader.MoveNext();
        }
        catch (NotSupportedException)
        {
            CutShort(at);
            return false;
        }
    }

    // Sep refuses rows over 16 million characters; nearly always a quote was left open before them.
    private void CutShort(int at)
    {
        findings.Add(CsvFindings.RowTooLong(source.At(new SourceSpan(at, 1))));
        isCutShort = true;
    }

    private (List<SourceSpan> Cells, int Length) Cut(SepReader.Row row, int start)
    {
        var cells = new List<SourceSpan>(row.ColCount);
        var at = start;
        for (var i = 0; i < row.ColCount; i++)
        {
            var length = row[i].Span.Length;
            cells.Add(CsvCell.Trim(text, new SourceSpan(at, length)));
            at += length + 1;
        }

        return (cells, row.Span.Length);
    }

    private ImmutableArray<CsvCell> ToCells(List<SourceSpan> cells)
    {
        foreach (var cell in cells)
        {
            if (Quotes.Fault(text, cell) is { } fault)
            {
                findings.Add(CsvFindings.Quotes(source, fault));
                return [];
            }
        }

        return [.. cells.Select(ToCell)];
    }

    private CsvCell ToCell(SourceSpan raw)
    {
        var isQuoted = Quotes.IsQuoted(text, raw);
        var content = isQuoted ? CsvCell.Trim(text, SourceSpan.FromBounds(raw.Start + 1, raw.End - 1)) : raw;
        return new CsvCell(source, content, isQuoted, isQuoted || separator != ',');
    }

    private int BehindLineEnd(int at)
    {
        if (at < text.Length && text[at] == '\r')
        {
            at++;
            return at < text.Length && text[at] == '\n' ? at + 1 : at;
        }

        return at + 1;
    }
}
