using System.Diagnostics;
using CsCheck;
using ScoreRules.Language.Diagnostics;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue.Csv;

public sealed class CsvRobustnessTests
{
    private static readonly Gen<char> AnySign = Gen.Frequency(
        (6, Gen.OneOf(';', ',', '\t', '"', '\r', '\n', '|', ' ')),
        (4, Gen.OneOf('1', '2', '.', '-', '°', '%', 's', 'k', 'g')),
        (2, Gen.Char),
        (1, Gen.OneOf('\uFEFF', '\0', '\uD83D', '\uDE00', '\u00A0', '\u202E')));

    private static readonly Gen<string> Start = Gen.OneOf(
        "", "movement", "movement;stretch;grip\n", "movement,set-up,prime mover\r\ncurl,", "movement\ttrains\tlike\tsmallest step\n\"a\"\"b\"\t", "\uFEFFmovement;;bench angle\n");

    [Fact]
    public void Any_text_ends_without_a_throw_and_every_finding_can_be_printed()
    {
        Gen.Select(Start, Gen.String[AnySign, 0, 60]).Sample((start, rest) =>
        {
            var table = Table.Read(start + rest);
            Built.From(table.Movements);
            foreach (var finding in table.Findings.ToSorted())
            {
                DiagnosticText.Full(finding).ShouldContain(finding.Code);
                Told.Offered(finding).ShouldAllBe(text => text != start + rest);
            }
        }, iter: 2000);
    }

    [Fact]
    public void Every_edit_that_needs_no_asking_removes_its_finding_and_adds_none()
    {
        var heading = Gen.OneOf("stretch", "strech", "grip", "gripp", "prime_mover", "set-up");
        var value = Gen.OneOf("1", "neutrall", "\"bicep, quadricep\"", "pronated", "", "\"supinate\"", "unknown", "9");
        Gen.Select(heading, heading, Gen.Select(value, value).Array[1, 4]).Sample((first, second, rows) =>
        {
            var text = $"movement,{first},{second}\n" + string.Concat(rows.Select((row, i) => $"m{i},{row.Item1},{row.Item2}\n"));
            var findings = Table.Read(text).Findings.ToSorted();
            foreach (var finding in findings.Where(finding => finding.Code == "SR7102" && Told.Mended(finding) is not null))
            {
                Table.Read(Told.Mended(finding)!).Findings.ToSorted().Length.ShouldBe(findings.Length - 1);
            }
        });
    }

    [Theory]
    [InlineData("curl", ";1", "", "SR7103")]
    [InlineData("\"", "\"\"", "\";9", "SR7102")]
    [InlineData("curl;\"1", "\"\"", "\"", "SR7102")]
    [InlineData("curl;", "1 ", "", "SR7102")]
    public void A_huge_row_is_read_in_time_in_proportion_to_its_length(string start, string repeated, string end, string code)
    {
        var row = start + string.Concat(Enumerable.Repeat(repeated, 1_000_000)) + end;
        var watch = Stopwatch.StartNew();
        Told.Only(Table.Read($"movement;stretch\n{row}\n").Findings).Code.ShouldBe(code);
        watch.Elapsed.ShouldBeLessThan(TimeSpan.FromSeconds(30), "steps by the square of the length would take many minutes");
    }

    [Fact]
    public void A_row_beyond_sixteen_million_characters_is_reported_where_it_starts()
    {
        var table = Table.Read("movement;stretch\ncurl;1\n\"" + new string('x', 17_000_000) + ";2\npress;3\n");
        var finding = Told.Only(table.Findings);
        (finding.Code, finding.Location.Line, finding.Location.Column).ShouldBe(("SR7109", 3, 1));
        table.Movements.ShouldHaveSingleItem().Name.ShouldBe("curl");
    }

    [Fact]
    public void A_heading_beyond_sixteen_million_characters_is_reported_once()
    {
        Told.Only(Table.Read("\"" + new string('x', 17_000_000)).Findings).Code.ShouldBe("SR7109");
    }
}
