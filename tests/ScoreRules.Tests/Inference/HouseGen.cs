using System.Collections.Immutable;
using CsCheck;
using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tests.Inference;

/// <summary>Random houses with chains, alternatives, negation, lists, unknown facts, scopes, overrides and recipes.</summary>
internal static class HouseGen
{
    private const int Levels = 4;

    private static readonly List<AttributeDefinition> Given =
    [
        Attribute(0, "stretch", AttributeKind.Rating),
        Attribute(1, "smallest step", AttributeKind.Measure),
        Attribute(2, "grip", AttributeKind.OneOf) with { Values = ["neutral", "pronated", "free"] },
        Attribute(3, "kit", AttributeKind.SomeOf) with { Values = ["bench", "cable", "bar", "box"] },
        Attribute(4, "audience", AttributeKind.SomeOf) with { Values = ["novice", "pregnant"], IsAboutThePerson = true },
        Attribute(5, WellKnownAttributes.Likeness, AttributeKind.Measure) with { IsWorkedOut = true },
    ];

    private static readonly List<AttributeDefinition> WorkedOut =
        [.. Enumerable.Range(0, Levels).Select(level => Attribute(Given.Count + level, $"worked out {level}", AttributeKind.Measure) with { IsWorkedOut = true })];

    private static readonly List<TargetDefinition> Targets = [Target(0, "arms", null), Target(1, "biceps", "Arms"), Target(2, "short head", "biceps"), Target(3, "legs", null)];

    private static readonly TierDefinition Tier = new("Top", 0, TierCut.Rest, 0, Ask.Here);

    /// <summary>Houses.</summary>
    public static Gen<HouseCase> Houses { get; } =
        from movements in Gen.Frequency((4, Gen.Int[1, 6]), (1, Gen.Int[30, 60])).SelectMany(Movements)
        from trains in Gen.Bool.Array[movements.Count * Targets.Count]
        from likeness in Gen.OneOf(ConditionGen.Number, Gen.Const(double.NaN)).Array[trains.Length]
        from audience in ConditionGen.Codes(2)
        from calls in All(level => Call(level).Array[0, 3])
        from recipes in All(level => Recipe(level).Array[0, 1])
        from acting in Gen.Int[0, 12].SelectMany(count => Each(Enumerable.Range(0, count).Select(Acting)))
        select House(movements, trains, likeness, [.. audience], calls, recipes, acting);

    private static HouseCase House(List<Movement> movements, bool[] trains, double[] likeness, int[] audience, List<CallDefinition> calls, List<RecipeDefinition> recipes, List<ConditionalStatement> acting)
    {
        var rows = Targets.SelectMany(_ => movements, (target, movement) => (target, movement))
            .Where((_, position) => trains[position]).Select((pair, index) => new PlacementRow(index, pair.movement, pair.target)).ToList();
        return new HouseCase([.. Given, .. WorkedOut], Targets, movements, rows, audience, [.. likeness.Take(rows.Count)]) { Calls = calls, Recipes = recipes, Acting = acting };
    }

    private static Gen<List<Movement>> Movements(int count) => Gen.Select(
        Fact(Gen.Int[0, 4].Select(rating => FactValue.Of(rating))),
        Fact(ConditionGen.Number.Select(FactValue.Of)),
        Fact(Gen.Int[0, 2].Select(code => FactValue.Of([code]))),
        Fact(ConditionGen.Codes(4).Select(FactValue.Of))).Array[count].Select(facts => facts.Select(Movement).ToList());

    private static Movement Movement((CatalogueFact First, CatalogueFact Second, CatalogueFact Third, CatalogueFact Fourth) facts, int index) =>
        new($"movement {index}", index, [], [], [facts.First, facts.Second, facts.Third, facts.Fourth, CatalogueFact.NotSaid, CatalogueFact.NotSaid, .. WorkedOut.Select(_ => CatalogueFact.NotSaid)], null, Ask.Here);

    private static Gen<CatalogueFact> Fact(Gen<FactValue> known) => Gen.Frequency(
        (3, known.Select(value => new CatalogueFact(value, FactOrigin.Stated, null, Ask.Here))),
        (1, Gen.Const(CatalogueFact.NotSaid)));

    // Strata are random: the order of firing must follow from what rules wait for, not from the numbers.
    private static Gen<CallDefinition> Call(int level) => Gen.Select(
        Info("call", $"fact {level}", []), Condition(level, 2), Gen.Int[0, 5], (info, condition, stratum) => new CallDefinition(info, condition, stratum));

    private static Gen<RecipeDefinition> Recipe(int level)
    {
        var start = Step(level, ConditionGen.Pick(RecipeOperation.StartWith));
        var others = Step(level, Gen.Int[0, 6].Select(operation => (RecipeOperation)operation)).Array[0, 4];
        return Gen.Select(Info("work out", WorkedOut[level].Name, []), start, others, Gen.Int[0, 5], (info, first, rest, stratum) => new RecipeDefinition(info, WorkedOut[level], [first, .. rest], stratum));
    }

    private static Gen<RecipeStep> Step(int level, Gen<RecipeOperation> operation)
    {
        AttributeDefinition?[] readable = [null, Given[0], Given[1], Given[5], .. WorkedOut.Take(level)];
        var condition = Gen.Frequency((2, ConditionGen.Pick<Condition?>((Condition?)null)), (1, Condition(level, 1).Select(condition => (Condition?)condition)));
        return Gen.Select(operation, ConditionGen.Number, ConditionGen.Pick(readable), condition, (how, number, attribute, when) => new RecipeStep(how, number, attribute, when, Ask.Here));
    }

    // Two rules share each name, and a rule overrides only names of earlier pairs: so no circle arises.
    private static Gen<ConditionalStatement> Acting(int position)
    {
        var overrides = position < 2 ? Gen.Const(Array.Empty<string>()) : Gen.Int[0, (position / 2) - 1].Select(earlier => $"RULE {earlier}").Array[0, 3];
        var info = overrides.SelectMany(names => Info("rule", $"rule {position / 2}", names));
        var leftOut = Gen.Int[0, 5].Select(movement => $"Movement {movement}").Array[0, 2];
        return Gen.Select(Gen.Frequency((2, Gen.Const(0)), (5, Gen.Int[1, 5])), info, Gen.OneOf(Condition(Levels, 0), Condition(Levels, 2)), leftOut, Statement);
    }

    private static ConditionalStatement Statement(int kind, StatementInfo info, Condition condition, string[] leftOut) => kind switch
    {
        0 => new AwardDefinition(info, condition, UncertainNumber.Certain(4)),
        1 => new CancelOutDefinition(info, condition, "for", "against", null),
        2 => new LimitDefinition(info, condition, info.Overrides.IsEmpty, Tier),
        3 => new ExclusionDefinition(info, condition, [.. leftOut]),
        4 => new CautionDefinition(info, condition, "Mind your step.", CautionSeverity.Low, CautionPlace.OnTheCard),
        _ => new RefusalDefinition(info, condition),
    };

    private static Gen<StatementInfo> Info(string kind, string name, string[] overrides) => Gen.Select(Scope(5), Scope(5), (only, except) =>
        Ask.Info(kind, name, overrides) with { OnlyFor = only, ExceptFor = except });

    private static Gen<ImmutableArray<ScopeEntry>> Scope(int emptyAgainstOne)
    {
        var target = ConditionGen.Pick(Targets.ToArray()).Select(Ask.Target);
        var movement = Gen.Int[0, 5].Select(index => Ask.Movement($"MOVEMENT {index}"));
        return Gen.Frequency((emptyAgainstOne, Gen.Const(ImmutableArray<ScopeEntry>.Empty)), (1, Gen.OneOf(target, movement).Array[1, 3].Select(entries => entries.ToImmutableArray())));
    }

    private static Gen<Condition> Condition(int level, int depth) => ConditionGen.Of(Given, WorkedOut, level, depth);

    private static Gen<List<T>> All<T>(Func<int, Gen<T[]>> atLevel) =>
        Each(Enumerable.Range(0, Levels).Select(atLevel)).Select(levels => levels.SelectMany(one => one).ToList());

    private static Gen<List<T>> Each<T>(IEnumerable<Gen<T>> generators) => generators.Aggregate(
        Gen.Const(Array.Empty<T>()).Select(none => none.ToList()),
        (before, next) => Gen.Select(before, next, (list, item) => list.Append(item).ToList()));

    private static AttributeDefinition Attribute(int index, string name, AttributeKind kind) =>
        new(Ask.Info("attribute", name), kind) { Index = index, Scale = (0, 4) };

    private static TargetDefinition Target(int index, string name, string? parent) =>
        new(Ask.Info("target", name), [], "movement 0", parent) { Index = index };
}
