using NRules;
using NRules.RuleModel;
using ScoreRules.Inference.Engine;
using ScoreRules.Language;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Inference;

/// <summary>What the engine underneath knows of the author's rules.</summary>
public sealed class EngineTraceTests
{
    [Fact]
    public void The_engine_itself_can_say_which_of_the_authors_statements_derived_a_fact()
    {
        var scene = new Scene("a", "b");
        var call = Ask.Call("good", scene.Rating("stretch", 4, 0).That(Comparison.AtLeast, 3));
        var award = Ask.Give(Ask.Called("good"), "bonus");
        scene.Calls.Add(call);
        scene.Acting.Add(award);
        var fired = new List<(object Statement, object? DerivedBy)>();
        Run(scene, fired);
        fired.ShouldBe([(call, null), (call, call), (award, call)]);
    }

    private static void Run(Scene scene, List<(object Statement, object? DerivedBy)> fired)
    {
        var rules = new RuleList(scene.Ruleset());
        var compiler = new RuleCompiler { ExpressionCompiler = new ShapeCompiler() };
        var session = compiler.Compile(rules.Rules.Select((rule, position) => RuleTranslation.Translate(rule, $"rule {position}"))).CreateSession();
        session.Events.RuleFiredEvent += (_, firing) => fired.Add((StatementOf(firing.Rule), SourceOf(firing.Facts)));
        session.Insert(new RankingFacts(scene.Table(), rules.SlotCount));
        session.Fire();
    }

    private static object StatementOf(IRuleDefinition rule) => rule.Properties.First(property => property.Name == RuleTranslation.StatementProperty).Value;

    private static object? SourceOf(IEnumerable<IFactMatch> facts) =>
        facts.Select(fact => fact.Source).OfType<ILinkedFactSource>().Select(source => StatementOf(source.Rule)).FirstOrDefault();
}
