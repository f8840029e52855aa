using ScoreRules.Inference;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

public sealed class OverridingTests
{
    private static readonly TierDefinition Top = new("Top", 0, TierCut.Score, 50, Ask.Here);

    private readonly Scene scene = new("a", "b", "c", "d");
    private readonly Condition first;
    private readonly Condition second;

    public OverridingTests()
    {
        first = scene.Rating("stretch", 4, 4, 0, null).That(Comparison.AtLeast, 3);
        second = scene.Rating("support", 4, 0, 4, 4).That(Comparison.AtLeast, 3);
    }

    [Fact]
    public void Where_both_hold_the_overridden_rule_has_no_effect()
    {
        var strong = Add(Ask.Give(first, "strong", "weak"));
        var weak = Add(Ask.Give(second, "weak"));
        var inferred = scene.Infer();
        Scene.Signs(inferred.Outcome(weak).Overridden).ShouldBe("+---");
        Scene.Signs(inferred.Outcome(weak).Effective).ShouldBe("--++", "where the strong one cannot be told it does nothing");
        Scene.Signs(inferred.Outcome(strong).Effective).ShouldBe("++--");
    }

    [Fact]
    public void Names_are_compared_without_regard_to_case()
    {
        Add(Ask.Give(Ask.Always(), "strong", "WEAK"));
        Effective(Ask.Give(second, "Weak")).ShouldBe("----");
    }

    [Fact]
    public void An_overridden_rule_overrides_nothing()
    {
        Add(Ask.Give(first, "strongest", "strong"));
        Add(Ask.Give(Ask.Always(), "strong", "weak"));
        Effective(Ask.Give(Ask.Always(), "weak")).ShouldBe("++--");
    }

    [Fact]
    public void Outside_its_scope_a_rule_overrides_nothing()
    {
        var strong = Ask.Give(Ask.Always(), "strong", "weak");
        Add(strong with { Info = strong.Info with { OnlyFor = [Ask.Movement("b")] } });
        Effective(Ask.Give(Ask.Always(), "weak")).ShouldBe("+-++");
    }

    [Fact]
    public void A_rule_of_another_kind_overrides_nothing()
    {
        Add(new LimitDefinition(Ask.Info("never above", "cap", "weak"), Ask.Always(), true, Top));
        Effective(Ask.Give(Ask.Always(), "weak")).ShouldBe("++++");
    }

    [Fact]
    public void A_floor_may_override_a_cap()
    {
        Add(new LimitDefinition(Ask.Info("never below", "floor", "cap"), first, false, Top));
        Effective(new LimitDefinition(Ask.Info("never above", "cap"), Ask.Always(), true, Top)).ShouldBe("--++");
    }

    [Fact]
    public void A_caution_is_never_overridden()
    {
        Add(Caution("loud", "quiet"));
        Effective(Caution("quiet")).ShouldBe("++++");
    }

    [Fact]
    public void A_rule_that_names_itself_does_not_override_itself() => Effective(Ask.Give(Ask.Always(), "one", "one")).ShouldBe("++++");

    [Fact]
    public void Of_two_rules_with_one_name_both_are_overridden()
    {
        Add(Ask.Give(first, "strong", "weak"));
        Add(Ask.Give(second, "weak"));
        Effective(Ask.Give(Ask.Always(), "weak")).ShouldBe("--++");
    }

    [Fact]
    public void Rules_that_override_one_another_are_refused_by_name()
    {
        Add(Ask.Give(Ask.Always(), "one", "two"));
        Add(Ask.Give(Ask.Always(), "two", "three"));
        Add(Ask.Give(Ask.Always(), "three", "one"));
        Should.Throw<InferenceException>(() => scene.Infer()).Message.ShouldStartWith("Rules that override one another in a circle cannot be applied: give \"one\"");
    }

    private static CautionDefinition Caution(string name, params string[] overrides) =>
        new(Ask.Info("caution", name, overrides), Ask.Always(), "Mind your step.", CautionSeverity.Low, CautionPlace.OnTheCard);

    private T Add<T>(T statement)
        where T : ConditionalStatement
    {
        scene.Acting.Add(statement);
        return statement;
    }

    private string Effective(ConditionalStatement statement) => Scene.Signs(AddAndInfer(statement).Outcome(statement).Effective);

    private InferenceResult AddAndInfer(ConditionalStatement statement)
    {
        scene.Acting.Add(statement);
        return scene.Infer();
    }
}
