using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using Shouldly;

namespace ScoreRules.Tests.Inference;

/// <summary>
/// A small house and catalogue, made column by column. Answers read as one sign a row: + held, - did not hold, ? could not
/// tell; rows run by target, then by movement.
/// </summary>
internal sealed class Scene(params string[] movements)
{
    private readonly List<AttributeDefinition> attributes = [];
    private readonly List<FactValue[]> columns = [];

    public List<TargetDefinition> Targets { get; } = [];

    public List<CallDefinition> Calls { get; } = [];

    public List<RecipeDefinition> Recipes { get; } = [];

    public List<ConditionalStatement> Acting { get; } = [];

    public ImmutableArray<int> Audience { get; set; } = [];

    public double[]? Likeness { get; set; }

    public static string Signs(ThreeValuedSet rows) =>
        string.Concat(Enumerable.Range(0, rows.Certain.Size).Select(row => rows.VerdictOf(row) switch { Verdict.Held => '+', Verdict.CouldNotTell => '?', _ => '-' }));

    public static string Signs(RowSet rows) => string.Concat(Enumerable.Range(0, rows.Size).Select(row => rows.Contains(row) ? '+' : '-'));

    public TargetDefinition Target(string name, string? parent = null)
    {
        Targets.Add(new TargetDefinition(Ask.Info("target", name), [], movements[0], parent) { Index = Targets.Count });
        return Targets[^1];
    }

    public AttributeDefinition Rating(string name, params double?[] values) =>
        Add(new AttributeDefinition(Ask.Info("attribute", name), AttributeKind.Rating) { Scale = (0, 4) }, values.Select(Number));

    public AttributeDefinition Measure(string name, params double?[] values) =>
        Add(new AttributeDefinition(Ask.Info("attribute", name), AttributeKind.Measure) { Unit = "kg" }, values.Select(Number));

    public AttributeDefinition Word(string name, string allowed, params string?[] values)
    {
        var attribute = new AttributeDefinition(Ask.Info("attribute", name), AttributeKind.OneOf) { Values = [.. allowed.Split(' ')] };
        return Add(attribute, values.Select(value => Words(attribute, value)));
    }

    public AttributeDefinition List(string name, string allowed, params string?[] values)
    {
        var attribute = new AttributeDefinition(Ask.Info("attribute", name), AttributeKind.SomeOf) { Values = [.. allowed.Split(' ')] };
        return Add(attribute, values.Select(value => Words(attribute, value)));
    }

    public AttributeDefinition Person(string name, string allowed) =>
        Add(new AttributeDefinition(Ask.Info("attribute", name), AttributeKind.SomeOf) { Values = [.. allowed.Split(' ')], IsAboutThePerson = true }, movements.Select(_ => FactValue.Unknown));

    public AttributeDefinition LikenessColumn() =>
        Add(new AttributeDefinition(Ask.Info("attribute", WellKnownAttributes.Likeness), AttributeKind.Measure) { Unit = "%", IsWorkedOut = true }, movements.Select(_ => FactValue.Unknown));

    public AttributeDefinition WorkOut(string name, params RecipeStep[] steps)
    {
        var made = Add(new AttributeDefinition(Ask.Info("work out", name), AttributeKind.Measure) { Unit = "kg", IsWorkedOut = true }, movements.Select(_ => FactValue.Unknown));
        Recipes.Add(new RecipeDefinition(Ask.Info("work out", name), made, [.. steps], 0));
        return made;
    }

    public BoundRuleset Ruleset() => new()
    {
        Attributes = [.. attributes],
        Targets = [.. Targets],
        Calls = [.. Calls],
        Recipes = [.. Recipes],
        Awards = [.. Acting.OfType<AwardDefinition>()],
        CancelOuts = [.. Acting.OfType<CancelOutDefinition>()],
        Limits = [.. Acting.OfType<LimitDefinition>()],
        Exclusions = [.. Acting.OfType<ExclusionDefinition>()],
        Cautions = [.. Acting.OfType<CautionDefinition>()],
        Refusals = [.. Acting.OfType<RefusalDefinition>()],
    };

    public FactTable Table()
    {
        if (Targets.Count == 0)
        {
            Target("arms");
        }

        var catalogue = movements.Select((name, index) => new Movement(name, index, [], [.. Targets], [.. columns.Select(column => Fact(column[index]))], null, Ask.Here)).ToList();
        var rows = Targets.SelectMany(_ => catalogue, (target, movement) => (target, movement)).Select((pair, index) => new PlacementRow(index, pair.movement, pair.target));
        return FactTable.Build(Ruleset(), [.. rows], new FactTableInputs(Audience, Likeness));
    }

    public InferenceResult Infer() => InferenceEngine.Infer(Ruleset(), Table());

    public string Answer(Condition condition)
    {
        var award = Ask.Give(condition);
        Acting.Add(award);
        return Signs(Infer().Outcome(award).Condition);
    }

    private static CatalogueFact Fact(FactValue value) => value.IsKnown ? new CatalogueFact(value, FactOrigin.Stated, null, Ask.Here) : CatalogueFact.NotSaid;

    private static FactValue Number(double? value) => value is { } number ? FactValue.Of(number) : FactValue.Unknown;

    private static FactValue Words(AttributeDefinition attribute, string? words) =>
        words is null ? FactValue.Unknown : FactValue.Of([.. words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(attribute.CodeOf).Order()]);

    private AttributeDefinition Add(AttributeDefinition attribute, IEnumerable<FactValue> values)
    {
        var placed = attribute with { Index = attributes.Count };
        attributes.Add(placed);
        columns.Add([.. values]);
        columns[^1].Length.ShouldBe(movements.Length, "one value for each movement");
        return placed;
    }
}
