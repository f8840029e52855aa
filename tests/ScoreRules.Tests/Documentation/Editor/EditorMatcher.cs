using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace ScoreRules.Tests.Documentation.Editor;

/// <summary>Colours text by a TextMate grammar, as far as ours goes: match, begin and end, captures, includes.</summary>
internal sealed class EditorMatcher
{
    private readonly JsonObject repository;
    private readonly List<(JsonObject Rule, Regex Opens)> rules;

    public EditorMatcher(string grammar)
    {
        var root = JsonNode.Parse(grammar)!.AsObject();
        repository = root["repository"]!.AsObject();
        rules = [.. Flat(root["patterns"]!.AsArray()).Select(rule => (rule, Pattern((rule["match"] ?? rule["begin"])!)))];
    }

    /// <summary>All lines of a text.</summary>
    public IReadOnlyList<ColouredLine> Colour(string text)
    {
        var lines = new List<ColouredLine>();
        JsonObject? open = null;
        foreach (var line in text.Split('\n'))
        {
            var coloured = new ColouredLine(line, new string?[line.Length]);
            open = open is not null && Pattern(open["end"]!).IsMatch(line) ? null : open;
            open = open is null ? Walk(coloured) : Fill(coloured, 0, open);
            lines.Add(coloured);
        }

        return lines;
    }

    private static JsonObject Fill(ColouredLine line, int from, JsonObject open)
    {
        Array.Fill(line.Scopes, (string)open["contentName"]!, from, line.Text.Length - from);
        return open;
    }

    // The rule that stays open at the end of the line, if one does.
    private JsonObject? Walk(ColouredLine line)
    {
        for (var at = 0; at < line.Text.Length;)
        {
            var (rule, match) = rules.Select(pair => (pair.Rule, Match: pair.Opens.Match(line.Text, at))).Where(pair => pair.Match.Success).OrderBy(pair => pair.Match.Index).FirstOrDefault();
            if (match is null)
            {
                return null;
            }

            Paint(line, rule, match);
            at = match.Index + Math.Max(match.Length, 1);
            if (rule["begin"] is not null)
            {
                return Fill(line, at - (match.Length == 0 ? 1 : 0), rule);
            }
        }

        return null;
    }

    private static void Paint(ColouredLine line, JsonObject rule, Match match)
    {
        if (rule["name"] is { } whole)
        {
            Array.Fill(line.Scopes, (string)whole!, match.Index, match.Length);
        }

        foreach (var (group, scope) in (rule["captures"] ?? rule["beginCaptures"])?.AsObject() ?? [])
        {
            var captured = match.Groups[group];
            Array.Fill(line.Scopes, (string)scope!["name"]!, captured.Success ? captured.Index : 0, captured.Length);
        }
    }

    private IEnumerable<JsonObject> Flat(JsonArray patterns) => patterns.Select(node => node!.AsObject()).SelectMany(node =>
        node["include"] is { } include ? Flat([repository[((string)include!)[1..]]!.DeepClone()])
        : node["patterns"] is { } inner ? Flat(inner.AsArray())
        : [node]);

    private static Regex Pattern(JsonNode pattern) => new((string)pattern!, RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1));
}
