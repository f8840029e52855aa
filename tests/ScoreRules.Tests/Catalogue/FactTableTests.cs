using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Tests.Inference;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

public sealed class FactTableTests
{
    [Fact]
    public void Numbers_are_kept_as_stated_and_unknown_ones_are_none()
    {
        var scene = new Scene("a", "b");
        var load = scene.Measure("load", 0.1 + 0.2, null);
        var column = scene.Table().Numbers(load);
        column[0].ShouldBe(0.1 + 0.2, "rounding is for comparing only");
        column[1].ShouldBe(double.NaN);
        column.Known.ShouldBe(RowSet.Of(2, [0]));
    }

    [Fact]
    public void Words_are_kept_by_code_with_nothing_told_apart_from_unknown()
    {
        var scene = new Scene("a", "b", "c");
        var kit = scene.List("kit", "bench cable", "bench cable", "", null);
        var column = scene.Table().Words(kit);
        column.Known.ShouldBe([0, 1]);
        column.Having(0).ShouldBe([0]);
        column.Having(1).ShouldBe([0]);
        column.Having(2).ShouldBeEmpty();
        column.HavingAll([]).ShouldBe([0, 1]);
    }

    [Fact]
    public void Columns_are_made_once()
    {
        var scene = new Scene("a");
        var (load, grip) = (scene.Measure("load", 1), scene.Word("grip", "free", "free"));
        var table = scene.Table();
        table.Numbers(load).ShouldBeSameAs(table.Numbers(load));
        table.Words(grip).ShouldBeSameAs(table.WithColumn(load, NumberColumn.Of([2])).Words(grip), "a table with a worked-out column shares the others");
    }

    [Fact]
    public void The_table_before_a_column_was_worked_out_stays_as_it_was()
    {
        var scene = new Scene("a");
        var load = scene.Measure("load", 1);
        var table = scene.Table();
        table.WithColumn(load, NumberColumn.Of([2])).Numbers(load)[0].ShouldBe(2);
        table.Numbers(load)[0].ShouldBe(1);
    }

    [Fact]
    public void A_fact_comes_with_where_it_comes_from()
    {
        var scene = new Scene("a") { Audience = [1, 0], Likeness = [42] };
        var load = scene.Measure("load", 7);
        var other = scene.Measure("other", (double?)null);
        var (audience, likeness) = (scene.Person("audience", "novice pregnant"), scene.LikenessColumn());
        var table = scene.Table();
        table.Fact(0, load).ShouldBe(new CatalogueFact(FactValue.Of(7), FactOrigin.Stated, null, Ask.Here));
        table.Fact(0, other).ShouldBe(CatalogueFact.NotSaid);
        table.Fact(0, audience).Origin.ShouldBe(FactOrigin.Profile);
        table.Fact(0, audience).Value.Codes.ShouldBe([0, 1]);
        table.Fact(0, likeness).ShouldBe(new CatalogueFact(FactValue.Of(42), FactOrigin.Computed, null, null));
    }

    [Fact]
    public void Without_likeness_it_is_unknown_and_without_profile_the_audience_is_known_and_empty()
    {
        var scene = new Scene("a");
        var (audience, likeness) = (scene.Person("audience", "novice"), scene.LikenessColumn());
        var table = scene.Table();
        table.Fact(0, likeness).Value.IsKnown.ShouldBeFalse();
        table.Known(likeness).ShouldBeEmpty();
        table.Fact(0, audience).Value.IsKnown.ShouldBeTrue();
        table.Known(audience).ShouldBe([0]);
    }

    [Fact]
    public void A_second_attribute_about_the_person_does_not_take_the_words_of_the_audience()
    {
        var scene = new Scene("a") { Audience = [0] };
        scene.Person("audience", "novice");
        var other = scene.Person("sore", "knee");
        scene.Table().Words(other).Having(0).ShouldBeEmpty();
        scene.Table().Known(other).ShouldBe([0]);
    }

    [Fact]
    public void Likeness_needs_a_number_for_each_row()
    {
        var scene = new Scene("a", "b") { Likeness = [42] };
        Should.Throw<ArgumentException>(() => scene.Table());
    }

    [Fact]
    public void An_attribute_that_a_movement_knows_nothing_of_is_unknown()
    {
        var scene = new Scene("a");
        var stray = new AttributeDefinition(Ask.Info("attribute", "stray"), AttributeKind.Measure) { Index = 9 };
        scene.Table().Known(stray).ShouldBeEmpty();
        scene.Table().Fact(0, stray).ShouldBe(CatalogueFact.NotSaid);
    }
}
