using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue.Csv;

public sealed class CsvNumberTests
{
    [Theory]
    [InlineData("smallest step", "2.5", 2.5)]
    [InlineData("smallest step", "2,5", 2.5)]
    [InlineData("smallest step", "\"2,5\"", 2.5)]
    [InlineData("smallest step", ".5", 0.5)]
    [InlineData("smallest step", "1.500", 1.5)]
    [InlineData("smallest step", "0,125", 0.125)]
    [InlineData("smallest step", "1500,250", 1500.25)]
    [InlineData("smallest step", "1,50", 1.5)]
    [InlineData("stretch", "1,500", 1.5)]
    [InlineData("bench angle", "-30", -30)]
    [InlineData("bench angle", "−30", -30)]
    public void Decimals_follow_a_point_or_a_comma(string attribute, string cell, double number)
    {
        Table.FindingsOf(attribute, cell).ToSorted().ShouldBeEmpty();
        Table.Cell(attribute, cell).ShouldBe(FactValue.Of(number));
    }

    [Fact]
    public void In_a_table_with_commas_a_decimal_comma_needs_quotes()
    {
        Table.Cell("smallest step", "\"2,5\"", ',').ShouldBe(FactValue.Of(2.5));
        Table.Cell("smallest step", "2.5", ',').ShouldBe(FactValue.Of(2.5));
        Told.Places(Table.FindingsOf("smallest step", "2,5", ',')).ShouldBe(["SR7103 [5]"]);
    }

    [Theory]
    [InlineData("set-up", "45 s", 45)]
    [InlineData("set-up", "45s", 45)]
    [InlineData("set-up", "1.5 MIN", 90)]
    [InlineData("smallest step", "500 g", 0.5)]
    [InlineData("smallest step", "2,5 kg", 2.5)]
    [InlineData("bench angle", "45°", 45)]
    [InlineData("bench angle", "45 degrees", 45)]
    public void Units_in_cells_are_converted_into_the_attributes_own(string attribute, string cell, double number)
    {
        Table.FindingsOf(attribute, cell).ToSorted().ShouldBeEmpty();
        Table.Cell(attribute, cell).ShouldBe(FactValue.Of(number));
    }

    [Theory]
    [InlineData("1.234,5", "1.234,5", "1234.5")]
    [InlineData("1,234.5 kg", "1,234.5", "1234.5")]
    [InlineData("1,500", "1,500", "1.500|1500")]
    [InlineData("-12,500 kg", "-12,500", "-12.500|-12500")]
    [InlineData("1.234.567", "1.234.567", "1234567")]
    [InlineData("1'500", "1'500", "1500")]
    [InlineData("1\u00A0500", "1\u00A0500", "1500")]
    [InlineData("2 500", "2 500", "2500")]
    [InlineData("1'500.25", "1'500.25", "1500.25")]
    public void A_number_that_can_be_read_in_two_ways_is_asked_about(string cell, string underlined, string meanings)
    {
        var finding = Told.Only(Table.FindingsOf("smallest step", cell));
        (finding.Code, finding.Location.Text).ShouldBe(("SR7104", underlined));
        finding.Suggestions.Select(suggestion => suggestion.Edit!.Replacement).ShouldBe(meanings.Split('|'));
        Told.Mended(finding).ShouldBeNull("the author must choose");
        Table.Cell("smallest step", cell).ShouldBeNull();
    }

    [Fact]
    public void Mixed_marks_are_asked_about_in_ratings_too()
    {
        Told.Places(Table.FindingsOf("stretch", "1.234,5")).ShouldBe(["SR7104 [1.234,5]"]);
    }

    [Fact]
    public void A_comma_before_three_digits_in_quotes_is_asked_about_in_a_table_with_commas()
    {
        Told.Places(Table.FindingsOf("smallest step", "\"1,500\"", ',')).ShouldBe(["SR7104 [1,500]"]);
    }

    [Theory]
    [InlineData("stretch", "high", "high")]
    [InlineData("stretch", "7", "7")]
    [InlineData("stretch", "-1", "-1")]
    [InlineData("stretch", "4,1", "4,1")]
    [InlineData("stretch", "3 s", "s")]
    [InlineData("stretch", "at a guess 5", "5")]
    [InlineData("stretch", "but3", "but3")]
    [InlineData("set-up", "nothing", "nothing")]
    [InlineData("set-up", "soon", "soon")]
    [InlineData("set-up", "45 kg", "kg")]
    [InlineData("set-up", "45 to 60 s", "to 60 s")]
    [InlineData("set-up", "--4", "--4")]
    [InlineData("set-up", "-", "-")]
    [InlineData("set-up", "12345678901234567890123456789012345678901", "12345678901234567890123456789012345678901")]
    [InlineData("smallest step", "2.5 \n kg/side", "kg/side")]
    public void What_is_no_fitting_number_is_underlined(string attribute, string cell, string underlined)
    {
        cell = cell.Contains('\n', StringComparison.Ordinal) ? $"\"{cell}\"" : cell;
        var findings = Table.FindingsOf(attribute, cell);
        Told.Places(findings).ShouldBe([$"SR7102 [{underlined}]"]);
        Told.Only(findings).Others.ShouldHaveSingleItem().Location.Text.ShouldBe($"attribute {attribute}");
        Table.Cell(attribute, cell).ShouldBeNull();
    }
}
