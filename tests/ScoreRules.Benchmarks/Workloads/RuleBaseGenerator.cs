using System.Collections.Immutable;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>
/// Makes rule bases: 20 attributes, 8 criteria, a third of the rules calling facts that chain three deep, one rule in
/// ten capping or leaving out, the others giving and taking points. The same numbers give the same rules.
/// </summary>
internal sealed class RuleBaseGenerator
{
    private const int Levels = 3;
    private readonly SeededNumbers numbers;
    private readonly List<WorkloadRule> rules = [];
    private readonly List<int> factLevels = [];

    private RuleBaseGenerator(ulong seed) => numbers = new SeededNumbers(seed);

    /// <summary>A rule base of so many rules; criteria are not counted.</summary>
    public static RuleBase Make(int ruleCount, ulong seed = 1)
    {
        var generator = new RuleBaseGenerator(seed);
        var attributes = Attributes();
        var criteria = Enumerable.Range(0, 8).Select(index => generator.Criterion(index, attributes)).ToImmutableArray();
        for (var level = 0; level < Levels; level++)
        {
            generator.AddCalls(level, ruleCount / (3 * Levels), attributes);
        }

        while (generator.rules.Count < ruleCount)
        {
            generator.AddActing(attributes);
        }

        return new RuleBase(attributes, criteria, [.. generator.rules], generator.factLevels.Count);
    }

    private static ImmutableArray<WorkloadAttribute> Attributes() =>
    [
        .. Enumerable.Range(0, 12).Select(index => new WorkloadAttribute($"rating-{RuleBase.Letters(index)}", AttributeShape.Rating, 5)),
        .. Enumerable.Range(0, 4).Select(index => new WorkloadAttribute($"measure-{RuleBase.Letters(index)}", AttributeShape.Measure, 200)),
        .. Enumerable.Range(0, 4).Select(index => new WorkloadAttribute($"word-{RuleBase.Letters(index)}", AttributeShape.Word, 6)),
    ];

    private WorkloadCriterion Criterion(int index, ImmutableArray<WorkloadAttribute> attributes)
    {
        var attribute = numbers.Below(attributes.Length);
        var points = attributes[attribute].Shape switch
        {
            AttributeShape.Rating => [(0, 0), (2, 20 + numbers.Below(50)), (4, 100)],
            AttributeShape.Measure => [(0, 100), (10, 80), (40, 20 + numbers.Below(40)), (99, 0)],
            _ => Enumerable.Range(0, attributes[attribute].Size).Select(step => ((double)step, numbers.Below(101))).ToImmutableArray(),
        };
        return new WorkloadCriterion($"criterion-{RuleBase.Letters(index)}", attribute, 4 + numbers.Below(25), points);
    }

    // Five statements call four facts, so that some facts have two ways in.
    private void AddCalls(int level, int count, ImmutableArray<WorkloadAttribute> attributes)
    {
        var first = factLevels.Count;
        var facts = Math.Max(1, count * 4 / 5);
        factLevels.AddRange(Enumerable.Repeat(level, facts));
        for (var i = 0; i < count; i++)
        {
            var rule = new WorkloadRule($"call-{RuleBase.Letters(rules.Count)}", RuleKind.Call, level, first + (i % facts), 0);
            rules.Add(WithCondition(rule, attributes, mustChain: level > 0));
        }
    }

    private void AddActing(ImmutableArray<WorkloadAttribute> attributes)
    {
        var draw = numbers.Below(20);
        var kind = draw == 0 ? RuleKind.LeaveOut : draw == 1 ? RuleKind.Cap : draw % 2 == 0 ? RuleKind.Give : RuleKind.Take;
        var points = kind switch { RuleKind.Give => 1 + numbers.Below(6), RuleKind.Take => -1 - numbers.Below(6), _ => 0 };
        var rule = new WorkloadRule($"rule-{RuleBase.Letters(rules.Count)}", kind, Levels, -1, points);
        rules.Add(WithCondition(rule, attributes, mustChain: numbers.Chance(50)));
    }

    private WorkloadRule WithCondition(WorkloadRule rule, ImmutableArray<WorkloadAttribute> attributes, bool mustChain)
    {
        // Few movements are left out or capped, as in a house that people write.
        var isRare = rule.Kind is RuleKind.LeaveOut or RuleKind.Cap;
        var tests = Enumerable.Range(0, isRare ? 4 : 1 + numbers.Below(3)).Select(_ => Test(attributes)).DistinctBy(test => test.Subject).ToImmutableArray();
        return rule with
        {
            Tests = tests,
            IsAny = tests.Length > 1 && !isRare && numbers.Chance(25),
            Also = mustChain ? Called(rule.Level) : null,
            Unless = numbers.Chance(15) ? (rule.Level > 0 && numbers.Chance(50) ? Called(rule.Level) : Test(attributes)) : null,
            OnlyTarget = numbers.Chance(10) ? numbers.Below(RuleBase.TargetCount) : -1,
        };
    }

    // A fact of the level right below, so that chains are as deep as they can be.
    private WorkloadTest Called(int level)
    {
        var candidates = Enumerable.Range(0, factLevels.Count).Where(fact => factLevels[fact] == level - 1).ToList();
        return new WorkloadTest(TestKind.Called, candidates[numbers.Below(candidates.Count)], 0);
    }

    private WorkloadTest Test(ImmutableArray<WorkloadAttribute> attributes)
    {
        var subject = numbers.Below(attributes.Length);
        var attribute = attributes[subject];
        var isWord = attribute.Shape == AttributeShape.Word;
        var kind = isWord ? (numbers.Chance(70) ? TestKind.Is : TestKind.OtherThan) : numbers.Chance(50) ? TestKind.AtLeast : TestKind.AtMost;
        return new WorkloadTest(kind, subject, attribute.ValueOf(isWord ? numbers.Below(attribute.Size) : 1 + numbers.Below(attribute.Size - 2)));
    }
}
