using System.Collections.Immutable;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>Generated movements as columns: what a loop without an engine works on.</summary>
/// <param name="Targets">The target of each row; rising, as the engine orders its rows.</param>
/// <param name="Columns">By attribute, then by row: the value. All facts are known.</param>
internal sealed record Rows(int[] Targets, double[][] Columns)
{
    /// <summary>How many rows there are.</summary>
    public int Count => Targets.Length;

    /// <summary>Name of a row's movement.</summary>
    public string NameOf(int row)
    {
        var first = ((Targets[row] * Count) + RuleBase.TargetCount - 1) / RuleBase.TargetCount;
        return RuleBase.MovementName(Targets[row], row - first);
    }

    /// <summary>So many rows for a rule base.</summary>
    public static Rows Make(ImmutableArray<WorkloadAttribute> attributes, int count, ulong seed = 2)
    {
        var numbers = new SeededNumbers(seed);
        var columns = attributes.Select(_ => new double[count]).ToArray();
        for (var row = 0; row < count; row++)
        {
            for (var attribute = 0; attribute < columns.Length; attribute++)
            {
                columns[attribute][row] = attributes[attribute].ValueOf(numbers.Below(attributes[attribute].Size));
            }
        }

        return new Rows([.. Enumerable.Range(0, count).Select(row => (int)((long)row * RuleBase.TargetCount / count))], columns);
    }
}
