using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Tests.Documentation;

/// <summary>
/// A TextMate grammar for rule text, written from the statement table, so that editors colour the words the program knows. Its
/// patterns keep to what Oniguruma and .NET have in common, and each stays inside one line, as a statement's lines do.
/// </summary>
internal static class TextMateGrammar
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // Words inside a line that say how its parts belong together.
    private static readonly string[] Phrases =
    [
        "at least", "at most", "more than", "less than", "between", "one of", "none of", "any of", "all of", "other than", "known", "unknown", "nothing", "above the benchmark",
        "below the benchmark", "of the benchmark", "the top", "the rest", "within", "times as important as", "more important than", "as important", "better than", "about the same as",
        "different by region from", "too unclear to compare with", "give or take", "likely", "no higher than", "no lower than", "left out", "left out by", "called", "now called", "by weights",
        "half as much", "twice as much", "as much", "of doubt", "alike",
    ];

    /// <summary>The grammar.</summary>
    public static string Text { get; } = new JsonObject
    {
        ["name"] = "ScoreRules",
        ["scopeName"] = "source.scorerules",
        ["fileTypes"] = new JsonArray("rules"),
        ["patterns"] = new JsonArray(Prose(), TextHead(), Declaring(), Head(), TextLine(), Line(), Include()),
        ["repository"] = new JsonObject { ["inside"] = new JsonObject { ["patterns"] = new JsonArray(Quoted(), Because(), Number(), Verb(), Words(), Comma()) } },
    }.ToJsonString(Indented) + "\n";

    private static IEnumerable<HeadSpec> Heads => StatementTable.All;

    private static IEnumerable<ClauseSpec> Clauses => StatementTable.All.SelectMany(head => head.Lines).Select(use => use.Spec).Where(spec => spec.Starter.Length > 0).DistinctBy(spec => spec.Starter);

    private static JsonObject Prose() => new()
    {
        ["begin"] = "^(?i:(philosophy|note))\\b(.*)$",
        ["beginCaptures"] = Captures("keyword.control.scorerules", "comment.block.documentation.scorerules"),
        ["end"] = "^(?=\\S)|^\\s*$",
        ["contentName"] = "comment.block.documentation.scorerules",
    };

    private static JsonObject TextHead() => Match($"^(?i:({Any(Heads.Where(head => head.FirstLine.Mode == ScanMode.Text && !head.IsProse).Select(head => head.Words))}))\\b(.*)$", "keyword.control.scorerules", "string.unquoted.scorerules");

    private static JsonObject Declaring()
    {
        var words = Heads.Where(head => head.DeclaresName && head.FirstLine.Mode == ScanMode.Tokens && head.Words != "say").Select(head => head.Words).Append("ruleset");
        return Match($"^(?i:({Any(words)}))\\b(.*)$", "keyword.control.scorerules", "entity.name.type.scorerules");
    }

    private static JsonObject Head() => Match($"^(?i:({Any(Heads.Where(head => head.FirstLine.Mode == ScanMode.Tokens).Select(head => head.Words))}))(?![\\w-])", "keyword.control.scorerules");

    private static JsonObject TextLine() => Match($"^\\s+(?i:({Any(Clauses.Where(spec => spec.Mode == ScanMode.Text).Select(spec => spec.Starter))}))\\b(.*)$", "keyword.other.scorerules", "comment.line.scorerules");

    private static JsonObject Line() => Match($"^\\s+(?i:({Any(Clauses.Where(spec => spec.Mode != ScanMode.Text).Select(spec => spec.Starter))}))(?![\\w-])", "keyword.other.scorerules");

    private static JsonObject Include() => new() { ["include"] = "#inside" };

    private static JsonObject Quoted() => new() { ["name"] = "string.quoted.double.scorerules", ["match"] = "\"[^\"]*\"" };

    private static JsonObject Because() => Match("\\b(?i:(because))\\b(.*)$", "keyword.other.scorerules", "comment.line.scorerules");

    private static JsonObject Number() =>
        Match($"(?<![\\w-])(-?[0-9]+(?:\\.[0-9]+)*)(%|°|\\s+(?:{Any(Units.All)})\\b)?(?![\\w-])", "constant.numeric.scorerules", "keyword.other.unit.scorerules");

    private static JsonObject Verb() => new() { ["name"] = "keyword.operator.word.scorerules", ["match"] = "(?<![\\w-])(?i:is|has|and|or|not|for|means)(?![\\w-])" };

    private static JsonObject Words() => new() { ["name"] = "support.constant.scorerules", ["match"] = $"(?<=\\b(?:is|has|as|at|means|[0-9%°]|points|point|parts|times|sd|s|kg|benchmark)\\s)\\s*(?i:{Any(Phrases)})(?![\\w-])" };

    private static JsonObject Comma() => new() { ["name"] = "punctuation.separator.scorerules", ["match"] = "," };

    private static JsonObject Match(string pattern, params string[] scopes) => new() { ["match"] = pattern, ["captures"] = Captures(scopes) };

    private static JsonObject Captures(params string[] scopes) => new(scopes.Select((scope, i) => KeyValuePair.Create<string, JsonNode?>($"{i + 1}", new JsonObject { ["name"] = scope })));

    // The longest first, so that "or when" is not taken for "or".
    private static string Any(IEnumerable<string> words) =>
        string.Join('|', words.Distinct(StringComparer.Ordinal).OrderByDescending(word => word.Length).ThenBy(word => word, StringComparer.Ordinal).Select(word => word.Replace(" ", "\\s+", StringComparison.Ordinal)));
}
