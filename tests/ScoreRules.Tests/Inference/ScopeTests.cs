using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

/// <summary>Rows: press and curl, each in arms, biceps (part of arms), short head (part of biceps) and legs.</summary>
public sealed class ScopeTests
{
    private readonly Scene scene = new("press", "curl");
    private readonly TargetDefinition arms;
    private readonly TargetDefinition biceps;
    private readonly TargetDefinition legs;

    public ScopeTests()
    {
        arms = scene.Target("arms");
        biceps = scene.Target("biceps", "arms");
        scene.Target("short head", "Biceps");
        legs = scene.Target("legs");
    }

    [Fact]
    public void Without_scope_a_statement_is_about_every_row() => InScope([], []).ShouldBe("++++++++");

    [Fact]
    public void A_rule_for_a_target_holds_for_all_that_is_part_of_it() => InScope([Ask.Target(arms)], []).ShouldBe("++++++--");

    [Fact]
    public void A_rule_for_a_part_does_not_hold_for_the_whole() => InScope([Ask.Target(biceps)], []).ShouldBe("--++++--");

    [Fact]
    public void A_rule_for_a_movement_holds_in_all_its_targets() => InScope([Ask.Movement("Curl")], []).ShouldBe("-+-+-+-+");

    [Fact]
    public void Several_names_are_alternatives() => InScope([Ask.Target(legs), Ask.Movement("curl")], []).ShouldBe("-+-+-+++");

    [Fact]
    public void Except_for_takes_targets_with_their_parts_and_movements_out() => InScope([], [Ask.Target(biceps), Ask.Movement("press")]).ShouldBe("-+-----+");

    [Fact]
    public void Except_for_wins_over_only_for() => InScope([Ask.Target(arms)], [Ask.Target(arms)]).ShouldBe("--------");

    [Fact]
    public void An_exemption_is_listed_where_the_condition_holds_and_the_rule_would_be_about_the_row()
    {
        var award = Scoped(Ask.Give(Ask.Always()), [Ask.Target(arms)], [Ask.Movement("curl")]);
        scene.Acting.Add(award);
        var outcome = scene.Infer().Outcome(award);
        Scene.Signs(outcome.Exempt).ShouldBe("-+-+-+--");
        Scene.Signs(outcome.Effective).ShouldBe("+-+-+---");
    }

    [Fact]
    public void Where_the_condition_does_not_hold_nothing_is_exempt()
    {
        var award = Scoped(Ask.Give(Ask.Unless(Ask.Always())), [], [Ask.Movement("curl")]);
        scene.Acting.Add(award);
        scene.Infer().Outcome(award).Exempt.ShouldBeEmpty();
    }

    [Fact]
    public void Outside_its_scope_a_doubtful_rule_is_not_listed()
    {
        var rating = scene.Rating("stretch", null, null);
        var award = Scoped(Ask.Give(rating.That(Language.Comparison.AtLeast, 1)), [Ask.Target(legs)], [Ask.Movement("press")]);
        scene.Acting.Add(award);
        var outcome = scene.Infer().Outcome(award);
        Scene.Signs(outcome.CouldNotTell).ShouldBe("-------+");
        Scene.Signs(outcome.Condition).ShouldBe("????????");
    }

    [Fact]
    public void Outside_its_scope_a_call_makes_nothing()
    {
        var call = Ask.Call("good", Ask.Always());
        scene.Calls.Add(call with { Info = call.Info with { OnlyFor = [Ask.Target(legs)] } });
        scene.Answer(Ask.Called("good")).ShouldBe("------++");
    }

    [Fact]
    public void A_movement_left_out_by_name_is_left_out_of_every_target()
    {
        var exclusion = new ExclusionDefinition(Ask.Info("leave out"), Ask.Always(), ["PRESS"]);
        scene.Acting.Add(exclusion);
        Scene.Signs(scene.Infer().Outcome(exclusion).Effective).ShouldBe("+-+-+-+-");
    }

    [Fact]
    public void A_movement_left_out_by_name_only_for_a_target_stays_in_the_others()
    {
        var exclusion = new ExclusionDefinition(Ask.Info("leave out") with { OnlyFor = [Ask.Target(legs)] }, Ask.Always(), ["press"]);
        scene.Acting.Add(exclusion);
        Scene.Signs(scene.Infer().Outcome(exclusion).Effective).ShouldBe("------+-");
    }

    private string InScope(ImmutableArray<ScopeEntry> only, ImmutableArray<ScopeEntry> except)
    {
        var award = Scoped(Ask.Give(Ask.Always()), only, except);
        scene.Acting.Add(award);
        return Scene.Signs(scene.Infer().Outcome(award).InScope);
    }

    private static AwardDefinition Scoped(AwardDefinition award, ImmutableArray<ScopeEntry> only, ImmutableArray<ScopeEntry> except) =>
        award with { Info = award.Info with { OnlyFor = only, ExceptFor = except } };
}
