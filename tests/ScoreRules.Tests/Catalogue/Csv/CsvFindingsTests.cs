using ScoreRules.Language.Diagnostics;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue.Csv;

public sealed class CsvFindingsTests
{
    [Theory]
    [InlineData("strech", "stretch")]
    [InlineData("lengthening", "stretch")]
    [InlineData("prime_mover", "prime mover")]
    [InlineData("other names", "also known as")]
    public void An_unknown_column_is_told_the_name_that_was_meant(string heading, string meant)
    {
        var finding = Told.Only(Table.Read($"movement;{heading}\ncurl;3\n").Findings);
        (finding.Code, finding.Location.Text, finding.Severity).ShouldBe(("SR7101", heading, Severity.Error));
        finding.Headline.ShouldBe($"\"{heading}\" is not something a movement can be described by");
        Told.Mended(finding).ShouldBe($"movement;{meant}\ncurl;3\n");
    }

    [Fact]
    public void A_column_that_resembles_nothing_gets_no_silly_suggestion()
    {
        var finding = Told.Only(Table.Read("movement;colour of the handle\ncurl;red\n").Findings);
        finding.Suggestions.ShouldHaveSingleItem().Advice.ShouldBe("declare the attribute in rule text, or take the column out");
    }

    [Fact]
    public void What_stands_under_no_heading_is_reported_once_at_its_first_cell()
    {
        var table = Table.Read("movement;;stretch\ncurl;;1\npress;what;2\nsquat;is this;3\n");
        Told.Places(table.Findings).ShouldBe(["SR7101 [what]"]);
        Told.Only(table.Findings).Others.ShouldHaveSingleItem().Location.Column.ShouldBe(10);
        table.Movements.Length.ShouldBe(3);
    }

    [Theory]
    [InlineData("grip", "pronate", "pronated")]
    [InlineData("grip", "nuetral", "neutral")]
    [InlineData("prime mover", "biceps, triceps_long_head", "triceps long head")]
    public void An_unknown_word_is_underlined_alone_and_told_what_was_meant(string attribute, string cell, string meant)
    {
        var wrong = cell.Split(", ")[^1];
        var finding = Told.Only(Table.FindingsOf(attribute, cell));
        (finding.Code, finding.Location.Text, finding.Within).ShouldBe(("SR7102", wrong, "row \"curl\""));
        finding.Headline.ShouldBe($"\"{wrong}\" is not a word for \"{attribute}\"");
        finding.Others.ShouldHaveSingleItem().Location.Text.ShouldBe($"attribute {attribute}");
        Told.Mended(finding).ShouldBe($"movement;{attribute}\ncurl;{cell.Replace(wrong, meant, StringComparison.Ordinal)}\n");
    }

    [Fact]
    public void A_cell_with_an_unknown_word_states_nothing()
    {
        Table.Cell("prime mover", "biceps, elbow").ShouldBeNull();
        Table.Cell("grip", "sideways").ShouldBeNull();
    }

    [Theory]
    [InlineData("grip", "nothing", "nothing", "\"nothing\" is said of lists, and \"grip\" has one value")]
    [InlineData("prime mover", "biceps, Biceps", "Biceps", "\"Biceps\" stands twice in this cell")]
    [InlineData("prime mover", " ,| ", ",|", "This list for \"prime mover\" holds no word")]
    [InlineData("prime mover", "biceps, nothing", "nothing", "\"nothing\" stands beside words in this list for \"prime mover\"")]
    [InlineData("trains", "arm", "arm", "\"arm\" is not a target")]
    [InlineData("trains", "arms, back", "back", "\"back\" is not a target")]
    public void Lists_and_words_that_do_not_fit_are_errors(string column, string cell, string underlined, string headline)
    {
        var finding = Told.Only(Table.FindingsOf(column, cell));
        (finding.Code, finding.Location.Text).ShouldBe(("SR7102", underlined));
        finding.Headline.ShouldBe(headline);
    }

    [Fact]
    public void A_target_that_was_not_understood_is_not_reported_again_when_the_catalogue_is_built()
    {
        Built.From(Table.Read("movement;trains\ncurl;amrs\n").Movements).Findings.ToSorted().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("curl;1;2;3", "2;3", "This row has 4 cells, but the heading has 2")]
    [InlineData("curl", "", "This row has 1 cell, but the heading has 2")]
    public void A_row_of_another_length_than_the_heading_is_an_error(string row, string underlined, string headline)
    {
        var table = Table.Read($"movement;stretch\n{row}\npress;4\n");
        var finding = Told.Only(table.Findings);
        (finding.Code, finding.Location.Text, finding.Headline).ShouldBe(("SR7103", underlined, headline));
        finding.Location.Line.ShouldBe(2);
        finding.Others.ShouldHaveSingleItem().Location.Text.ShouldBe("movement;stretch");
        table.Movements.ShouldHaveSingleItem().Name.ShouldBe("press");
    }

    [Fact]
    public void A_row_without_a_name_is_an_error_where_the_name_belongs()
    {
        var finding = Told.Only(Table.Read("stretch;movement;grip\n1; ;neutral\n").Findings);
        (finding.Code, finding.Location.Line, finding.Location.Column, finding.Location.Text).ShouldBe(("SR7105", 2, 3, ""));
        finding.Others.ShouldHaveSingleItem().Location.Text.ShouldBe("movement");
    }

    [Fact]
    public void A_movement_in_two_rows_is_an_error_at_the_second()
    {
        var table = Table.Read("movement;stretch\ncurl;1\nCurl;2\n");
        var finding = Told.Only(table.Findings);
        (finding.Code, finding.Location.Text, finding.Location.Line).ShouldBe(("SR7106", "Curl", 3));
        finding.Others.ShouldHaveSingleItem().Location.Line.ShouldBe(2);
        table.Movements.ShouldHaveSingleItem().Facts.ShouldHaveSingleItem().Value.Number.ShouldBe(1);
    }

    [Theory]
    [InlineData("movement;also known as\npress;curl\ncurl;\n", "curl", 2)]
    [InlineData("movement;also known as\na;x, y\nb;z, x\n", "x", 3)]
    public void Another_name_that_is_already_taken_is_an_error(string text, string underlined, int line)
    {
        var finding = Told.Only(Table.Read(text).Findings);
        (finding.Code, finding.Location.Text, finding.Location.Line).ShouldBe(("SR7106", underlined, line));
        finding.Suggestions.Length.ShouldBe(2);
    }

    [Fact]
    public void A_movement_may_repeat_its_own_names()
    {
        Table.Read("movement;also known as\ncurl;Curl, biceps curl, biceps curl\n").Findings.ToSorted().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("audience", "\"audience\" is about the person, so a table of movements cannot state it")]
    [InlineData("Grade", "\"grade\" is worked out, so a table of movements cannot state it")]
    [InlineData("likeness to the benchmark", "\"likeness to the benchmark\" is worked out, so a table of movements cannot state it")]
    public void What_no_movement_may_state_cannot_be_a_column(string heading, string headline)
    {
        var table = Table.Read($"movement;{heading}\ncurl;1\n");
        var finding = Told.Only(table.Findings);
        (finding.Code, finding.Location.Text, finding.Headline).ShouldBe(("SR7107", heading, headline));
        table.Movements.ShouldHaveSingleItem().Facts.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("", "")]
    [InlineData(" \n\n", "")]
    [InlineData("stretch;grip\n1;neutral\n", "stretch")]
    public void A_table_must_name_its_movements(string text, string underlined)
    {
        var table = Table.Read(text);
        Told.Places(table.Findings).ShouldBe([$"SR7108 [{underlined}]"]);
        table.Movements.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("movment;stretch\ncurl;1\n", "movment")]
    [InlineData("exercise;stretch\ncurl;1\n", "exercise")]
    public void A_heading_that_stands_for_movement_is_the_one_thing_reported(string text, string underlined)
    {
        var finding = Told.Only(Table.Read(text).Findings);
        (finding.Code, finding.Location.Text).ShouldBe(("SR7101", underlined));
        Told.Mended(finding).ShouldStartWith("movement;stretch\n");
    }

    [Theory]
    [InlineData("movement;stretch\n\"curl;1\npress;2\n", "\"", 2, "The double quote that starts here is not closed")]
    [InlineData("movement;stretch\n12\" bar curl;1\npress;2\n", "\"", 2, "A double quote stands in a cell that does not begin with one")]
    [InlineData("movement;stretch\n\"curl\" low;1\npress;2\n", "low", 2, "Text stands behind the double quote that closes a cell")]
    [InlineData("movement;\"stretch\ncurl;1\n", "\"", 1, "The double quote that starts here is not closed")]
    public void A_quote_that_encloses_no_cell_is_one_error(string text, string underlined, int line, string headline)
    {
        var finding = Told.Only(Table.Read(text).Findings);
        (finding.Code, finding.Location.Text, finding.Location.Line, finding.Headline).ShouldBe(("SR7109", underlined, line, headline));
    }

    [Fact]
    public void A_fault_of_quotes_in_one_row_leaves_the_others_alone()
    {
        Table.Read("movement;stretch\n\"curl\" low;1\npress;2\n").Movements.ShouldHaveSingleItem().Name.ShouldBe("press");
    }

    [Fact]
    public void Two_columns_for_one_thing_are_an_error_and_the_first_counts()
    {
        var table = Table.Read("movement;stretch;grip;Stretch\ncurl;1;neutral;2\n");
        var finding = Told.Only(table.Findings);
        (finding.Code, finding.Location.Text).ShouldBe(("SR7110", "Stretch"));
        finding.Others.ShouldHaveSingleItem().Location.Text.ShouldBe("stretch");
        table.Movements.Single().Facts.Select(fact => fact.Value.Number).ShouldContain(1);
        table.Movements.Single().Facts.Length.ShouldBe(2);
    }

    [Fact]
    public void Every_faulty_cell_is_reported_in_the_order_of_the_table()
    {
        Told.Places(Table.Read("movement;stretch;grip\na;9;neutra\nb;9;neutra\n").Findings)
            .ShouldBe(["SR7102 [9]", "SR7102 [neutra]", "SR7102 [9]", "SR7102 [neutra]"]);
    }

    [Fact]
    public void A_long_text_is_cut_in_its_message_and_shown_on_one_line()
    {
        Told.Only(Table.FindingsOf("grip", $"\"pro\n\u0001 {new string('x', 500)}\"")).Headline.Length.ShouldBeLessThan(120);
        Told.Only(Table.FindingsOf("grip", "\"pro\n\u0001ny\"")).Headline.ShouldBe("\"pro \uFFFDny\" is not a word for \"grip\"");
    }
}
