using System.Text.Json;
using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Peers;

/// <summary>json-rules-engine 7.3.1 under Node. The process times its own passes; starting it and reading the file are not counted.</summary>
internal sealed class JsonRulesEnginePeer : IPeer
{
    private static readonly JsonSerializerOptions Names = new(JsonSerializerDefaults.Web);
    private readonly string folder = OutsideProcess.FolderOf("tests", "ScoreRules.Benchmarks", "Peers", "json-rules-engine");

    /// <inheritdoc/>
    public string Name => "json-rules-engine 7.3.1 (npm)";

    /// <inheritdoc/>
    public int LargestCatalogue => 1_000;

    /// <inheritdoc/>
    public bool IsOutside => true;

    /// <inheritdoc/>
    public string? Missing => !OutsideProcess.Exists("node", "--version") ? "needs Node 18 or newer"
        : Directory.Exists(Path.Combine(folder, "node_modules")) ? null
        : "needs \"npm ci --omit=dev\" in tests/ScoreRules.Benchmarks/Peers/json-rules-engine";

    /// <inheritdoc/>
    public Func<PeerRun> Prepare(RuleBase rules, Rows rows)
    {
        var input = Path.GetTempFileName();
        var output = Path.GetTempFileName();
        var score = new ColumnarScore(rules, rows);
        File.WriteAllText(input, JsonSerializer.Serialize(Input(rules, rows), Names));
        return () =>
        {
            OutsideProcess.Run("node", folder, "run.mjs", input, output);
            var result = JsonSerializer.Deserialize<JsonRulesEngineResult>(File.ReadAllText(output), Names)!;
            var held = result.Held.Select(members => Words(members, rows.Count)).ToArray();
            return new PeerRun(result.Milliseconds.Order().ElementAt(result.Milliseconds.Count / 2), new PeerAnswers(held, score.Run(held)));
        };
    }

    private static object Input(RuleBase rules, Rows rows) => new
    {
        Attributes = rules.Attributes.Select(attribute => attribute.Name),
        Rows = rows.Count,
        rows.Targets,
        rows.Columns,
        Passes = 3,
        Rules = rules.Rules.Select(rule => new
        {
            rule.Level,
            rule.Fact,
            rule.IsAny,
            rule.OnlyTarget,
            Tests = rule.Tests.Select(Test),
            Also = rule.Also is null ? null : Test(rule.Also),
            Unless = rule.Unless is null ? null : Test(rule.Unless),
        }),
    };

    private static object Test(WorkloadTest test) => new { Kind = test.Kind.ToString(), test.Subject, test.Value };

    private static ulong[] Words(IEnumerable<int> members, int count)
    {
        var words = new ulong[(count + 63) / 64];
        foreach (var row in members)
        {
            words[row >> 6] |= 1UL << row;
        }

        return words;
    }
}
