using System.Globalization;
using RulesEngine.Models;
using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Peers;

/// <summary>
/// The NuGet package RulesEngine. It does not chain by itself: each level of rules is a workflow of its own, and the facts
/// they call are written back into its input between workflows.
/// </summary>
internal sealed class RulesEnginePeer
{
    private readonly RuleBase rules;
    private readonly Rows rows;
    private readonly ColumnarScore score;
    private readonly (string Workflow, int[] Rules)[] levels;
    private readonly RulesEngine.RulesEngine engine;

    private RulesEnginePeer(RuleBase rules, Rows rows)
    {
        this.rules = rules;
        this.rows = rows;
        score = new ColumnarScore(rules, rows);
        levels = [.. Enumerable.Range(0, rules.Rules.Length).GroupBy(rule => rules.Rules[rule].Level).OrderBy(level => level.Key)
            .Select(level => (string.Create(CultureInfo.InvariantCulture, $"level {level.Key}"), level.ToArray()))];
        engine = new RulesEngine.RulesEngine([.. levels.Select(Workflow)]);
    }

    /// <summary>The peer.</summary>
    public static InProcessPeer Peer { get; } = new("RulesEngine 6.0.1 (NuGet)", 10_000, (rules, rows) =>
    {
        var peer = new RulesEnginePeer(rules, rows);
        return () =>
        {
            var answers = peer.RunAsync().GetAwaiter().GetResult();
            return () => answers;
        };
    });

    private async Task<PeerAnswers> RunAsync()
    {
        var held = rules.Rules.Select(_ => new ulong[(rows.Count + 63) / 64]).ToArray();
        for (var row = 0; row < rows.Count; row++)
        {
            var movement = new RulesEngineMovement { T = rows.Targets[row], N = [.. rows.Columns.Select(column => column[row])], F = new bool[rules.FactCount] };
            var input = new RuleParameter("m", movement);
            foreach (var (workflow, members) in levels)
            {
                var results = await engine.ExecuteAllRulesAsync(workflow, input).ConfigureAwait(false);
                for (var i = 0; i < members.Length; i++)
                {
                    Note(members[i], results[i].IsSuccess, row, movement, held);
                }
            }
        }

        return new PeerAnswers(held, score.Run(held));
    }

    private void Note(int rule, bool holds, int row, RulesEngineMovement movement, ulong[][] held)
    {
        if (!holds)
        {
            return;
        }

        held[rule][row >> 6] |= 1UL << row;
        if (rules.Rules[rule].Kind == RuleKind.Call)
        {
            movement.F[rules.Rules[rule].Fact] = true;
        }
    }

    private Workflow Workflow((string Workflow, int[] Rules) level) => new()
    {
        WorkflowName = level.Workflow,
        Rules = [.. level.Rules.Select(rule => new Rule { RuleName = rules.Rules[rule].Name, Expression = Expression(rules.Rules[rule]) })],
    };

    private static string Expression(WorkloadRule rule)
    {
        var parts = new List<string> { $"({string.Join(rule.IsAny ? " || " : " && ", rule.Tests.Select(Expression))})" };
        parts.AddRange(rule.Also is { } also ? [Expression(also)] : []);
        parts.AddRange(rule.Unless is { } unless ? [$"!({Expression(unless)})"] : []);
        parts.AddRange(rule.OnlyTarget >= 0 ? [string.Create(CultureInfo.InvariantCulture, $"m.T == {rule.OnlyTarget}")] : []);
        return string.Join(" && ", parts);
    }

    private static string Expression(WorkloadTest test) => test.Kind switch
    {
        TestKind.Called => $"m.F[{Subject(test)}]",
        TestKind.AtLeast => $"m.N[{Subject(test)}] >= {Number(test)}",
        TestKind.AtMost => $"m.N[{Subject(test)}] <= {Number(test)}",
        TestKind.Is => $"m.N[{Subject(test)}] == {Number(test)}",
        _ => $"m.N[{Subject(test)}] != {Number(test)}",
    };

    private static string Subject(WorkloadTest test) => test.Subject.ToString(CultureInfo.InvariantCulture);

    private static string Number(WorkloadTest test) => test.Value.ToString(CultureInfo.InvariantCulture);
}
