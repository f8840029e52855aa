namespace ScoreRules.Benchmarks.Workloads;

/// <summary>
/// The floor: the same rules in plain loops over arrays, no engine, no trail, no unknown values. Comparisons are made 64
/// rows at a time without branches and joined as bits.
/// </summary>
/// <param name="rules">The rules.</param>
/// <param name="rows">The movements.</param>
internal sealed class ColumnarLoop(RuleBase rules, Rows rows)
{
    private readonly ColumnarScore score = new(rules, rows);
    private readonly int wordCount = (rows.Count + 63) / 64;

    /// <summary>PeerAnswers all rules and scores all rows.</summary>
    public PeerAnswers Run()
    {
        var facts = new ulong[rules.FactCount][];
        var held = new ulong[rules.Rules.Length][];
        for (var i = 0; i < held.Length; i++)
        {
            var rule = rules.Rules[i];
            held[i] = Evaluate(rule, facts);
            if (rule.Kind == RuleKind.Call)
            {
                facts[rule.Fact] = Unite(facts[rule.Fact], held[i]);
            }
        }

        return new PeerAnswers(held, score.Run(held));
    }

    private ulong[] Evaluate(WorkloadRule rule, ulong[][] facts)
    {
        var result = new ulong[wordCount];
        for (var word = 0; word < wordCount; word++)
        {
            var bits = rule.IsAny ? 0UL : ulong.MaxValue;
            foreach (var test in rule.Tests)
            {
                bits = rule.IsAny ? bits | Bits(test, word, facts) : bits & Bits(test, word, facts);
            }

            bits &= rule.Also is { } also ? Bits(also, word, facts) : ulong.MaxValue;
            bits &= rule.Unless is { } unless ? ~Bits(unless, word, facts) : ulong.MaxValue;
            bits &= rule.OnlyTarget < 0 ? ulong.MaxValue : TargetBits(rule.OnlyTarget, word);
            result[word] = bits & Inside(word);
        }

        return result;
    }

    private ulong Bits(WorkloadTest test, int word, ulong[][] facts) => test.Kind switch
    {
        TestKind.Called => facts[test.Subject][word],
        TestKind.AtLeast => AtLeast(Block(test, word), test.Value),
        TestKind.AtMost => AtMost(Block(test, word), test.Value),
        TestKind.Is => Is(Block(test, word), test.Value),
        _ => ~Is(Block(test, word), test.Value),
    };

    private ReadOnlySpan<double> Block(WorkloadTest test, int word)
    {
        var start = word << 6;
        return rows.Columns[test.Subject].AsSpan(start, Math.Min(64, rows.Count - start));
    }

    private static ulong AtLeast(ReadOnlySpan<double> block, double value)
    {
        var bits = 0UL;
        for (var i = 0; i < block.Length; i++)
        {
            bits |= (block[i] >= value ? 1UL : 0UL) << i;
        }

        return bits;
    }

    private static ulong AtMost(ReadOnlySpan<double> block, double value)
    {
        var bits = 0UL;
        for (var i = 0; i < block.Length; i++)
        {
            bits |= (block[i] <= value ? 1UL : 0UL) << i;
        }

        return bits;
    }

    private static ulong Is(ReadOnlySpan<double> block, double value)
    {
        var bits = 0UL;
        for (var i = 0; i < block.Length; i++)
        {
            bits |= (block[i] == value ? 1UL : 0UL) << i;
        }

        return bits;
    }

    private ulong TargetBits(int target, int word)
    {
        var bits = 0UL;
        var block = rows.Targets.AsSpan(word << 6, Math.Min(64, rows.Count - (word << 6)));
        for (var i = 0; i < block.Length; i++)
        {
            bits |= (block[i] == target ? 1UL : 0UL) << i;
        }

        return bits;
    }

    private ulong Inside(int word) => word < wordCount - 1 || (rows.Count & 63) == 0 ? ulong.MaxValue : (1UL << (rows.Count & 63)) - 1;

    private static ulong[] Unite(ulong[]? fact, ulong[] part)
    {
        fact ??= new ulong[part.Length];
        for (var i = 0; i < part.Length; i++)
        {
            fact[i] |= part[i];
        }

        return fact;
    }
}
