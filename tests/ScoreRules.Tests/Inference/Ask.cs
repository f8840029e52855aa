using System.Collections.Immutable;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Inference;

/// <summary>Short ways to write conditions by hand.</summary>
internal static class Ask
{
    public static SourceLocation Here { get; } = new SourceText("by-hand.rules", "by hand\n").At(new SourceSpan(0, 7));

    public static AttributeTest That(this AttributeDefinition attribute, Comparison comparison, double number = double.NaN, double high = double.NaN) =>
        new(attribute, comparison, number, high, [], Here);

    public static AttributeTest That(this AttributeDefinition attribute, Comparison comparison, params string[] words) =>
        new(attribute, comparison, double.NaN, double.NaN, [.. words.Select(attribute.CodeOf).Order()], Here);

    public static CalledTest Called(string fact) => new(fact, Here);

    public static AllOf All(params Condition[] parts) => new([.. parts], Here);

    public static AnyOf Any(params Condition[] parts) => new([.. parts], Here);

    public static Unless Unless(Condition part) => new(part, Here);

    public static Everything Always() => new(Here);

    public static ScopeEntry Target(TargetDefinition target) => new(target, null, null, Here);

    public static ScopeEntry Movement(string name) => new(null, name, null, Here);

    public static StatementInfo Info(string kind, string? name = null, params string[] overrides) =>
        new(kind, name, Here) { Overrides = [.. overrides] };

    public static CallDefinition Call(string fact, Condition condition, int stratum = 0) => new(Info("call", fact), condition, stratum);

    public static AwardDefinition Give(Condition condition, string? name = null, params string[] overrides) => new(Info("give", name, overrides), condition, UncertainNumber.Certain(4));

    public static RecipeStep Step(RecipeOperation operation, double number, Condition? condition = null) => new(operation, number, null, condition, Here);

    public static RecipeStep Step(RecipeOperation operation, AttributeDefinition attribute, Condition? condition = null) => new(operation, double.NaN, attribute, condition, Here);

    public static ImmutableArray<T> Only<T>(params T[] items) => [.. items];
}
