using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Catalogue;

/// <summary>A vocabulary of each kind of attribute and three targets, one of them part of another.</summary>
internal static class SmallHouse
{
    private const string Text = """
        attribute stretch
        attribute set-up
        attribute grip
        attribute prime mover
        attribute bench angle
        attribute smallest step
        attribute audience
        attribute grade
        attribute likeness to the benchmark
        target arms
        target triceps
        target legs
        """;

    private static readonly SourceText Source = new("vocabulary.rules", Text);

    private static readonly ImmutableArray<string> Muscles = ["biceps", "triceps long head", "triceps short heads", "quadriceps"];

    public static ImmutableArray<AttributeDefinition> Attributes { get; } =
    [
        new(Info("attribute", "stretch"), AttributeKind.Rating) { Index = 0, Scale = (0, 4), CountsForLikeness = true, Synonyms = ["lengthening"] },
        new(Info("attribute", "set-up"), AttributeKind.Measure) { Index = 1, Unit = "s", CountsForLikeness = true },
        new(Info("attribute", "grip"), AttributeKind.OneOf) { Index = 2, Values = ["pronated", "neutral", "supinated"], CountsForLikeness = true },
        new(Info("attribute", "prime mover"), AttributeKind.SomeOf) { Index = 3, Values = Muscles, CountsForLikeness = true },
        new(Info("attribute", "bench angle"), AttributeKind.Measure) { Index = 4, Unit = "°", CountsForLikeness = true },
        new(Info("attribute", "smallest step"), AttributeKind.Measure) { Index = 5, Unit = "kg" },
        new(Info("attribute", "audience"), AttributeKind.OneOf) { Index = 6, Values = ["adult", "youth"], IsAboutThePerson = true },
        new(Info("attribute", "grade"), AttributeKind.Measure) { Index = 7, Unit = "points", IsWorkedOut = true },
        new(Info("attribute", "likeness to the benchmark"), AttributeKind.Measure) { Index = 8, Unit = "%", IsWorkedOut = true },
    ];

    public static ImmutableArray<TargetDefinition> Targets { get; } =
    [
        new(Info("target", "arms"), [("biceps", 0.5), ("triceps long head", 0.25), ("triceps short heads", 0.25)], "curl", null) { Index = 0 },
        new(Info("target", "triceps"), [("triceps long head", 0.5), ("triceps short heads", 0.5)], "pressdown", "arms") { Index = 1 },
        new(Info("target", "legs"), [("quadriceps", 1)], "squat", null) { Index = 2 },
    ];

    public static AttributeDefinition Attribute(string name) => Attributes.Single(attribute => attribute.Name == name);

    public static TargetDefinition Target(string name) => Targets.Single(target => target.Name == name);

    public static BoundRuleset With(IEnumerable<MovementDeclaration> movements) =>
        new() { Attributes = Attributes, Targets = Targets, Movements = [.. movements] };

    private static StatementInfo Info(string kind, string name)
    {
        var start = Text.IndexOf($"{kind} {name}", StringComparison.Ordinal);
        return new StatementInfo(kind, name, Source.At(new SourceSpan(start, kind.Length + 1 + name.Length)));
    }
}
