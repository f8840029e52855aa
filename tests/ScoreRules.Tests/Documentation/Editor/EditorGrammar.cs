using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Tests.Documentation.Ebnf;
using ScoreRules.Tests.Documentation.Manual;

namespace ScoreRules.Tests.Documentation.Editor;

/// <summary>Writes the statement table as a TextMate grammar. Its patterns keep to what all engines for such grammars share.</summary>
internal static class EditorGrammar
{
    private const string End = "(?=[\\s,\"]|$)";
    private const string Number = "-?[0-9]+(?:\\.[0-9]+)*";
    private static readonly JsonSerializerOptions Printing = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };
    private static readonly ClauseSpec[] Lines = [.. StatementTable.All.SelectMany(head => head.Lines).Select(use => use.Spec).Where(spec => spec.Starter.Length > 0).DistinctBy(spec => spec.Starter)];

    // Words that stand alone as a fixed word and hardly ever in a name.
    private static readonly string[] SingleWords = ["between", "known", "unknown", "nothing", "likely", "within"];

    /// <summary>The grammar as JSON.</summary>
    public static string Print()
    {
        string[] order = ["note", "philosophy", "section", "caution", "declaration", "head", "text-line", "counted-text-line", "checked-line", "clause", "reason", "name", "date", "number", "phrase", "word"];
        var grammar = new JsonObject
        {
            ["name"] = "ScoreRules",
            ["scopeName"] = "source.scorerules",
            ["fileTypes"] = new JsonArray("rules"),
            ["patterns"] = new JsonArray([.. order.Select(name => (JsonNode)new JsonObject { ["include"] = $"#{name}" })]),
            ["repository"] = new JsonObject(Statements().Concat(Clauses()).Concat(Pieces())),
        };
        return grammar.ToJsonString(Printing) + "\n";
    }

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Statements()
    {
        var plain = StatementTable.All.Where(head => !head.IsProse && head.FirstLine.Mode == ScanMode.Tokens).ToList();
        yield return new("note", Prose("note", "comment.block"));
        yield return new("philosophy", Prose("philosophy", "comment.block.documentation"));
        yield return new("section", Match($"^({Words(["section"])})(.*)$", "keyword.control", "markup.heading"));
        yield return new("caution", Match($"^({Words(StatementTable.All.Where(LanguageManual.IsRefused).Select(head => head.Words).Append("caution"))})(.*)$", "keyword.control", "string.unquoted.caution"));
        yield return new("declaration", Match($"^({Words(plain.Where(head => head.DeclaresName).Select(head => head.Words))})\\s+(\"[^\"]*\"|[^\",]*?)(?=\\s*$|\\s+(?i:means)\\b|,)", "keyword.control", "entity.name"));
        yield return new("head", Match($"^({Words(plain.Select(head => head.Words))})", "keyword.control"));
    }

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Clauses()
    {
        var texts = Lines.Where(spec => spec.Mode == ScanMode.Text && spec != Uniform.Note).Select(spec => spec.Starter);
        yield return new("text-line", new JsonObject
        {
            ["patterns"] = new JsonArray(
                Match($"^\\s+({Words(["note"])})(.*)$", "keyword.other.clause", "comment.line"),
                Match($"^\\s+({Words(texts)})(.*)$", "keyword.other.clause", "string.unquoted")),
        });
        yield return new("counted-text-line", Match($"^\\s+({Words(Lines.Where(spec => spec.Mode == ScanMode.TextAfterNumber).Select(spec => spec.Starter))})\\s+({Number})(.*)$", "keyword.other.clause", "constant.numeric", "string.unquoted"));
        yield return new("checked-line", Match($"^\\s+({Words(Lines.Where(spec => spec.Mode == ScanMode.TextAfterBy).Select(spec => spec.Starter))})\\s+({Date})\\s+(?i:(by))(.*)$", "keyword.other.clause", "constant.other.date", "keyword.operator.phrase", "string.unquoted"));
        yield return new("clause", Match($"^\\s+({Words(Lines.Select(spec => spec.Starter))})", "keyword.other.clause"));
    }

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Pieces()
    {
        var units = string.Join('|', Units.All.OrderByDescending(unit => unit.Length).ThenBy(unit => unit, StringComparer.Ordinal));
        yield return new("reason", Match($"({Words(["because"], "\\b")})(.*)$", "keyword.operator.word", "string.unquoted"));
        yield return new("name", new JsonObject { ["name"] = "string.quoted.double.scorerules", ["match"] = "\"[^\"]*\"" });
        yield return new("date", new JsonObject { ["name"] = "constant.other.date.scorerules", ["match"] = Date });
        yield return new("number", Match($"(?<![\\w.-])({Number})(?!-?[A-Za-z])(?:(%|°|\\s+(?i:{units})\\b))?", "constant.numeric", "keyword.other.unit"));
        yield return new("phrase", Match($"({Words(Phrases(), "\\b")})", "keyword.operator.phrase"));
        yield return new("word", Match($"({Words(ReservedWords.All, "\\b")})", "keyword.operator.word"));
    }

    private static string Date => $"[0-9]{{1,2}}\\s+(?i:{string.Join('|', CalendarDay.Months)})\\s+[0-9]{{4}}";

    // The fixed words inside lines, as the manual tells them. A single short one, such as "to", may as well be part of a name.
    private static IEnumerable<string> Phrases() =>
        LanguageManual.Rules().Values.SelectMany(Terminals).Where(words => words.Contains(' ', StringComparison.Ordinal) || SingleWords.Contains(words))
            .Except(StatementTable.All.Select(head => head.Words), StringComparer.Ordinal);

    private static IEnumerable<string> Terminals(EbnfPart part) => part switch
    {
        EbnfPart.Terminal terminal => [terminal.Text],
        EbnfPart.Sequence sequence => sequence.Parts.SelectMany(Terminals),
        EbnfPart.Choice choice => choice.Parts.SelectMany(Terminals),
        EbnfPart.Optional optional => Terminals(optional.Part),
        _ => [],
    };

    // Longest first, so that "but at a guess" wins over "but".
    private static string Words(IEnumerable<string> words, string before = "") =>
        $"{before}(?i:{string.Join('|', words.Distinct(StringComparer.Ordinal).OrderByDescending(text => text.Length).ThenBy(text => text, StringComparer.Ordinal).Select(text => Regex.Escape(text).Replace("\\ ", "\\s+", StringComparison.Ordinal)))}){End}";

    private static JsonObject Prose(string head, string scope) => new()
    {
        ["contentName"] = $"{scope}.scorerules",
        ["begin"] = $"^({Words([head])})",
        ["beginCaptures"] = Captures("keyword.control"),
        ["end"] = "^(?=\\S)|^\\s*$",
    };

    private static JsonObject Match(string pattern, params string[] scopes) => new() { ["match"] = pattern, ["captures"] = Captures(scopes) };

    private static JsonObject Captures(params string[] scopes) =>
        new(scopes.Select((scope, index) => new KeyValuePair<string, JsonNode?>($"{index + 1}", new JsonObject { ["name"] = $"{scope}.scorerules" })));
}
