using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>
/// A stricter floor: the columnar loop with the two tricks that our engine uses too, equal comparisons made once and four
/// rows compared in one instruction. What our engine costs above this is the engine itself.
/// </summary>
/// <param name="rules">The rules.</param>
/// <param name="rows">The movements.</param>
internal sealed class VectorLoop(RuleBase rules, Rows rows)
{
    private readonly ColumnarScore score = new(rules, rows);
    private readonly double[][] padded = [.. rows.Columns.Select(Padded)];
    private readonly double[] targets = Padded([.. rows.Targets.Select(target => (double)target)]);
    private readonly int wordCount = (rows.Count + 63) / 64;

    /// <summary>PeerAnswers all rules and scores all rows.</summary>
    public PeerAnswers Run()
    {
        var known = new Dictionary<WorkloadTest, ulong[]>();
        var held = new ulong[rules.Rules.Length][];
        for (var i = 0; i < held.Length; i++)
        {
            var rule = rules.Rules[i];
            held[i] = Evaluate(rule, known);
            if (rule.Kind == RuleKind.Call)
            {
                var fact = new WorkloadTest(TestKind.Called, rule.Fact, 0);
                known[fact] = known.TryGetValue(fact, out var before) ? Joined(before, held[i], isAny: true) : held[i];
            }
        }

        return new PeerAnswers(held, score.Run(held));
    }

    private ulong[] Evaluate(WorkloadRule rule, Dictionary<WorkloadTest, ulong[]> known)
    {
        var bits = Bits(rule.Tests[0], known);
        foreach (var test in rule.Tests.AsSpan()[1..])
        {
            bits = Joined(bits, Bits(test, known), rule.IsAny);
        }

        bits = rule.Also is { } also ? Joined(bits, Bits(also, known), isAny: false) : bits;
        bits = rule.Unless is { } unless ? Joined(bits, Flipped(Bits(unless, known)), isAny: false) : bits;
        return rule.OnlyTarget < 0 ? bits : Joined(bits, Compare(targets, TestKind.Is, rule.OnlyTarget), isAny: false);
    }

    private ulong[] Bits(WorkloadTest test, Dictionary<WorkloadTest, ulong[]> known)
    {
        if (!known.TryGetValue(test, out var bits))
        {
            bits = Compare(padded[test.Subject], test.Kind, test.Value);
            known[test] = bits;
        }

        return bits;
    }

    private ulong[] Compare(double[] column, TestKind kind, double value)
    {
        var lanes = MemoryMarshal.Cast<double, Vector256<double>>(column);
        var asked = Vector256.Create(value);
        var bits = new ulong[wordCount];
        for (var i = 0; i < lanes.Length; i++)
        {
            var holds = kind switch
            {
                TestKind.AtLeast => Vector256.GreaterThanOrEqual(lanes[i], asked),
                TestKind.AtMost => Vector256.LessThanOrEqual(lanes[i], asked),
                _ => Vector256.Equals(lanes[i], asked),
            };
            bits[i >> 4] |= (ulong)holds.ExtractMostSignificantBits() << ((i & 15) << 2);
        }

        return kind == TestKind.OtherThan ? Flipped(bits) : bits;
    }

    private ulong[] Flipped(ulong[] bits)
    {
        var flipped = Array.ConvertAll(bits, word => ~word);
        flipped[^1] &= (rows.Count & 63) == 0 ? ulong.MaxValue : (1UL << (rows.Count & 63)) - 1;
        return flipped;
    }

    private static ulong[] Joined(ulong[] left, ulong[] right, bool isAny)
    {
        var joined = new ulong[left.Length];
        for (var i = 0; i < joined.Length; i++)
        {
            joined[i] = isAny ? left[i] | right[i] : left[i] & right[i];
        }

        return joined;
    }

    // Rows behind the last one compare as false.
    private static double[] Padded(double[] column)
    {
        var longer = new double[(column.Length + 63) / 64 * 64];
        Array.Fill(longer, double.NaN);
        column.CopyTo(longer, 0);
        return longer;
    }
}
