using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue.Csv;

public sealed class CsvReadingTests
{
    [Theory]
    [InlineData(";")]
    [InlineData(",")]
    [InlineData("\t")]
    public void The_separator_is_seen_in_the_heading(string separator)
    {
        var table = Table.Read("movement;trains;stretch\nchin-up;arms;3\n".Replace(";", separator, StringComparison.Ordinal));
        table.Findings.ToSorted().ShouldBeEmpty();
        var movement = table.Movements.ShouldHaveSingleItem();
        movement.Name.ShouldBe("chin-up");
        movement.Trains.ShouldHaveSingleItem().Name.ShouldBe("arms");
        movement.Facts.ShouldHaveSingleItem().Value.ShouldBe(FactValue.Of(3));
    }

    [Fact]
    public void A_separator_inside_quotes_does_not_count_as_the_tables_own()
    {
        Table.Read("\"movement\";\"likeness,,,,\"\ncurl;\n").Findings.ToSorted().ShouldHaveSingleItem().Location.Text.ShouldBe("likeness,,,,");
    }

    [Fact]
    public void A_heading_may_go_on_over_a_line_end_inside_quotes()
    {
        var table = Table.Read("\"also\nknown as\",movement,stretch\n,curl,2\n");
        table.Findings.ToSorted().ShouldBeEmpty();
        table.Movements.ShouldHaveSingleItem().Name.ShouldBe("curl");
    }

    [Fact]
    public void A_table_of_names_alone_is_one_column()
    {
        Table.Read("movement\ncurl\nfly, low to high\n").Movements.Select(movement => movement.Name).ShouldBe(["curl", "fly, low to high"]);
    }

    [Fact]
    public void All_fixed_columns_are_read()
    {
        var table = Table.Read("Source;like;MOVEMENT;also  known as;note;trains\nown notes;curl;cable curl;pulley curl | low curl;seen twice;arms, triceps\n");
        table.Findings.ToSorted().ShouldBeEmpty();
        var movement = table.Movements.ShouldHaveSingleItem();
        movement.Info.ShouldBe(new StatementInfo("row", "cable curl", movement.Info.Location) { Origin = "own notes" });
        movement.Info.Location.Text.ShouldBe("cable curl");
        movement.Synonyms.ShouldBe(["pulley curl", "low curl"]);
        (movement.Like, movement.LikeLocation!.Text).ShouldBe(("curl", "curl"));
        (movement.TrainsLocation!.Text, movement.Trains.Length).ShouldBe(("arms, triceps", 2));
    }

    [Fact]
    public void What_is_not_said_stays_empty()
    {
        var movement = Table.Read("movement;trains;like;also known as;source;stretch\ncurl;;;;;\n").Movements.ShouldHaveSingleItem();
        (movement.Trains.Length, movement.TrainsLocation, movement.Like, movement.LikeLocation, movement.Synonyms.Length, movement.Facts.Length, movement.Info.Origin)
            .ShouldBe((0, null, null, null, 0, 0, null));
    }

    [Fact]
    public void Blank_nothing_and_unknown_are_three_things()
    {
        var table = Table.Read("movement;prime mover\nblank;\nnone;nothing\ndoubt;Unknown\n");
        table.Findings.ToSorted().ShouldBeEmpty();
        table.Movements[0].Facts.ShouldBeEmpty();
        table.Movements[1].Facts.ShouldHaveSingleItem().Value.ShouldBe(FactValue.Of([]), "known to be empty");
        table.Movements[2].Facts.ShouldHaveSingleItem().Value.ShouldBeSameAs(FactValue.Unknown);
    }

    [Fact]
    public void Unknown_may_stand_in_any_kind_of_column()
    {
        Table.Cell("stretch", "unknown").ShouldBeSameAs(FactValue.Unknown);
        Table.Cell("set-up", "unknown").ShouldBeSameAs(FactValue.Unknown);
        Table.Cell("grip", "unknown").ShouldBeSameAs(FactValue.Unknown);
    }

    [Theory]
    [InlineData("biceps;quadriceps", ',')]
    [InlineData("quadriceps | biceps", ',')]
    [InlineData("quadriceps , biceps,", ';')]
    [InlineData("\"biceps,quadriceps\"", ',')]
    [InlineData("\"biceps;quadriceps\"", ';')]
    [InlineData("\"biceps;\nquadriceps\"", ';')]
    public void Lists_are_cut_at_every_sign_that_separates_no_cells(string cell, char separator)
    {
        Table.Cell("prime mover", cell, separator).ShouldNotBeNull().Codes.ShouldBe([0, 3]);
    }

    [Theory]
    [InlineData("low curl, pulley curl", "low curl/pulley curl")]
    [InlineData("leg press, feet high|", "leg press, feet high")]
    [InlineData("leg press, feet high | sled press", "leg press, feet high/sled press")]
    public void A_comma_belongs_to_a_name_where_names_are_cut_otherwise(string cell, string names)
    {
        Table.Read($"movement;also known as\ncurl;{cell}\n").Movements.Single().Synonyms.ShouldBe(names.Split('/'));
    }

    [Fact]
    public void Words_are_found_without_regard_to_case_and_blanks()
    {
        Table.Cell("grip", "  Neutral ").ShouldNotBeNull().Codes.ShouldBe([1]);
        Table.Cell("prime mover", "Triceps\u00A0 long head").ShouldNotBeNull().Codes.ShouldBe([1]);
    }

    [Theory]
    [InlineData("3", false, false)]
    [InlineData("but 3", true, false)]
    [InlineData("at a guess 3", false, true)]
    [InlineData("But  at a guess 3", true, true)]
    public void A_cell_may_begin_with_but_and_at_a_guess(string cell, bool isBut, bool isGuess)
    {
        var fact = Table.Read($"movement;stretch\ncurl;{cell}\n").Movements.Single().Facts.ShouldHaveSingleItem();
        (fact.IsBut, fact.IsGuess, fact.Value.Number).ShouldBe((isBut, isGuess, 3));
        (fact.Value.Low, fact.Value.High).ShouldBe(isGuess ? (2, 4) : (3, 3));
        fact.Location.Text.ShouldBe(cell);
    }

    [Fact]
    public void Blank_rows_and_blank_columns_are_passed_over()
    {
        var table = Table.Read("\n;;\r\nmovement;stretch;\ncurl;1;\n\n;;\n\"\"; ;\npress;2;");
        table.Findings.ToSorted().ShouldBeEmpty();
        table.Movements.Select(movement => movement.Name).ShouldBe(["curl", "press"]);
    }

    [Fact]
    public void Rows_become_movements_that_inherit_and_are_told_to_say_but()
    {
        var table = Table.Read("movement;trains;like;stretch\ncurl;arms;;2\ncable curl;;curl;3\n");
        var built = Built.From(table.Movements);
        var finding = Told.Only(built.Findings);
        (finding.Code, finding.Location.Text, finding.Within).ShouldBe(("SR7005", "3", "row \"cable curl\""));
        Told.Mended(finding).ShouldBe("movement;trains;like;stretch\ncurl;arms;;2\ncable curl;;curl;but 3\n");
        Built.From(Table.Read(Told.Mended(finding)!).Movements).Findings.ToSorted().ShouldBeEmpty();
    }

    [Fact]
    public void A_row_that_says_but_without_reason_can_be_mended()
    {
        var finding = Told.Only(Built.From(Table.Read("movement;trains;stretch\ncurl;arms;but 2\n").Movements).Findings);
        finding.Code.ShouldBe("SR7004");
        Told.Mended(finding).ShouldBe("movement;trains;stretch\ncurl;arms;2\n");
    }

    [Fact]
    public void A_row_without_a_target_is_told_to_fill_its_cell()
    {
        var finding = Told.Only(Built.From(Table.Read("movement;trains\ncurl;\n").Movements).Findings);
        finding.Suggestions.ShouldHaveSingleItem().Advice.ShouldBe("write its target into the column \"trains\", for example arms");
    }

    [Fact]
    public void A_message_prints_the_cell_with_file_line_and_column()
    {
        DiagnosticText.Short(Told.Only(Table.Read("movement;stretch\ncurl;7\n").Findings))
            .ShouldBe("movements.csv:2:6: error SR7102: \"stretch\" is rated 0 to 4");
    }

    [Fact]
    public void Names_of_columns_are_compared_as_names_are_everywhere()
    {
        NameText.Same("Prime  Mover", "prime mover").ShouldBeTrue();
        Table.Read("movement;Prime  Mover\ncurl;biceps\n").Movements.Single().Facts.ShouldHaveSingleItem();
    }
}
