using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tests.Inference;

/// <summary>A house, a catalogue and a person, as a generator makes them.</summary>
internal sealed record HouseCase(
    List<AttributeDefinition> Attributes,
    List<TargetDefinition> Targets,
    List<Movement> Movements,
    List<PlacementRow> Rows,
    int[] Audience,
    double[] Likeness)
{
    public List<CallDefinition> Calls { get; init; } = [];

    public List<RecipeDefinition> Recipes { get; init; } = [];

    public List<ConditionalStatement> Acting { get; init; } = [];

    public IEnumerable<BoundStatement> Statements => Calls.Concat<BoundStatement>(Acting);

    public static Condition ConditionOf(BoundStatement statement) =>
        statement is CallDefinition call ? call.Condition : ((ConditionalStatement)statement).Condition;

    public InferenceResult Infer()
    {
        var ruleset = new BoundRuleset
        {
            Attributes = [.. Attributes],
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
        return InferenceEngine.Infer(ruleset, FactTable.Build(ruleset, [.. Rows], new FactTableInputs([.. Audience], Likeness)));
    }

    /// <summary>The same house with its rules, movements, targets and rows in another order.</summary>
    public HouseCase Shuffled(int seed)
    {
        var random = new Random(seed);
        var movements = Shuffle(Movements, random).Select((movement, index) => movement with { Index = index }).ToList();
        var rows = Shuffle(Rows, random).Select((row, index) => new PlacementRow(index, movements.Find(movement => movement.Name == row.Movement.Name)!, row.Target));
        return new HouseCase(Attributes, Shuffle(Targets, random), movements, [.. rows], Audience, [])
        {
            Calls = Shuffle(Calls, random),
            Recipes = Shuffle(Recipes, random),
            Acting = Shuffle(Acting, random),
        }.WithLikenessOf(this);
    }

    private HouseCase WithLikenessOf(HouseCase other) =>
        this with { Likeness = [.. Rows.Select(row => other.Likeness[other.Rows.FindIndex(before => Same(before, row))])] };

    private static bool Same(PlacementRow left, PlacementRow right) => left.Movement.Name == right.Movement.Name && ReferenceEquals(left.Target, right.Target);

    private static List<T> Shuffle<T>(List<T> items, Random random)
    {
        var shuffled = items.ToArray();
        random.Shuffle(shuffled);
        return [.. shuffled];
    }
}
