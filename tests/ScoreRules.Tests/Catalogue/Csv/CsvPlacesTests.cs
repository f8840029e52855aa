using System.Text;
using CsCheck;
using ScoreRules.Catalogue.Csv;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue.Csv;

public sealed class CsvPlacesTests
{
    private static readonly Gen<string> Content = Gen.String[Gen.OneOf('a', 'é', '漢', '\u0301', ' ', ';', ',', '\t', '"', '\n', '\r', '7', '.', '|'), 0, 6].Select(text => text.Trim());

    private static readonly Gen<string> Padding = Gen.OneOf("", " ", "  ");

    private static readonly Gen<string> LineEnd = Gen.OneOf("\n", "\r\n", "\r");

    [Fact]
    public void Places_behind_quoted_line_breaks_accents_and_carriage_returns_are_exact()
    {
        var table = Table.Read("\uFEFFmovement;note;stretch;grip\r\n\"Überzüge\"\"\r\nlang\";\"ein\r\nWort; noch eins\"; \"7\" ;neutral\r\n漢字;;2;sideways\r\n");
        table.Findings.ToSorted().Select(finding => (finding.Code, finding.Location.Line, finding.Location.Column, finding.Location.Text))
            .ShouldBe([("SR7102", 4, 20, "7"), ("SR7102", 5, 7, "sideways")]);
        table.Movements[0].Name.ShouldBe("Überzüge\"\r\nlang");
        table.Movements[0].Info.Location.Text.ShouldBe("Überzüge\"\"\r\nlang");
        table.Movements[1].Facts[0].Location.ShouldBe(table.Movements[1].Facts[0].Location with { Span = new SourceSpan(table.Movements[1].Info.Location.Span.End + 2, 1) });
    }

    [Fact]
    public void A_byte_order_mark_is_no_part_of_the_first_heading()
    {
        Told.Places(Table.Read("\uFEFFexercise;stretch\ncurl;1\n").Findings).ShouldBe(["SR7101 [exercise]"]);
    }

    [Fact]
    public void Every_cell_of_any_table_is_found_where_it_was_written()
    {
        var cell = Gen.Select(Content, Padding, Padding);
        var table = Gen.Select(Gen.OneOf(';', ',', '\t'), Gen.Bool, cell.Array[1, 5].SelectMany(row => LineEnd.Select(end => (row, end))).Array[1, 6]);
        table.Sample((separator, hasMark, rows) =>
        {
            var (text, expected) = Write(separator, hasMark, rows);
            var findings = new DiagnosticBag();
            var read = new CsvRows(new SourceText("t.csv", text), separator, findings).Read().Select(row => row.Cells.Select(found => (found.Span, found.Text)).ToList()).ToList();
            findings.ToSorted().ShouldBeEmpty();
            read.Count.ShouldBe(expected.Count);
            read.Zip(expected).ShouldAllBe(pair => pair.First.SequenceEqual(pair.Second));
        });
    }

    [Fact]
    public void Places_stay_exact_beyond_any_buffer()
    {
        var text = new StringBuilder("movement;note;stretch\r\n");
        for (var i = 0; i < 20_000; i++)
        {
            text.Append('m').Append(i).Append(";\"").Append('x', i % 97).Append("\r\n\"\"é\";").Append(i % 5).Append(i % 2 == 0 ? "\r\n" : "\n");
        }

        var table = Table.Read(text.ToString());
        table.Findings.ToSorted().ShouldBeEmpty();
        table.Movements.Length.ShouldBe(20_000);
        for (var i = 0; i < 20_000; i++)
        {
            table.Movements[i].Info.Location.Text.ShouldBe($"m{i}");
            table.Movements[i].Facts[0].Location.Text.ShouldBe($"{i % 5}");
        }
    }

    // Writes a table and notes where each cell's content begins and ends; rows without content are noted as absent.
    private static (string Text, List<List<(SourceSpan Span, string Text)>> Rows) Write(char separator, bool hasMark, ((string, string, string)[] Row, string End)[] rows)
    {
        var text = new StringBuilder(hasMark ? "\uFEFF" : "");
        var all = new List<List<(SourceSpan, string)>>();
        foreach (var (row, end) in rows)
        {
            var cells = new List<(SourceSpan, string)>();
            foreach (var (content, before, after) in row)
            {
                text.Append(cells.Count == 0 ? "" : separator);
                cells.Add((WriteCell(text, content, before, after, separator), content));
            }

            text.Append(end);
            if (row.Any(cell => cell.Item1.Length > 0))
            {
                all.Add(cells);
            }
        }

        return (text.ToString(), all);
    }

    private static SourceSpan WriteCell(StringBuilder text, string content, string before, string after, char separator)
    {
        var quote = content.AsSpan().ContainsAny("\"\r\n") || content.Contains(separator, StringComparison.Ordinal) ? "\"" : "";
        text.Append(before).Append(quote);
        var start = content.Length == 0 ? text.Length - before.Length : text.Length;
        var escaped = content.Replace("\"", "\"\"", StringComparison.Ordinal);
        text.Append(escaped).Append(quote).Append(after);
        return new SourceSpan(start, escaped.Length);
    }
}
