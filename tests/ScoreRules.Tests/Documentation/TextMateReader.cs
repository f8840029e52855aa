using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Documentation;

/// <summary>Colours rule text by <c>docs/editor/scorerules.tmLanguage.json</c>, as an editor would: line by line, the first pattern that begins soonest.</summary>
internal sealed class TextMateReader
{
    private readonly JsonObject grammar = JsonNode.Parse(Repository.Read("docs", "editor", "scorerules.tmLanguage.json"))!.AsObject();

    /// <summary>The scopes of a text: place, length and name, in order.</summary>
    public IReadOnlyList<(int Start, int Length, string Scope)> Read(string text)
    {
        var scopes = new List<(int Start, int Length, string Scope)>();
        var (offset, prose) = (0, default(JsonObject));
        foreach (var line in text.Split('\n'))
        {
            if (prose is not null && Regex.IsMatch(line, prose["end"]!.GetValue<string>(), RegexOptions.None, TimeSpan.FromSeconds(1)))
            {
                prose = null;
            }

            if (prose is not null)
            {
                scopes.Add((offset, line.Length, prose["contentName"]!.GetValue<string>()));
            }
            else
            {
                prose = ReadLine(line, offset, scopes);
            }

            offset += line.Length + 1;
        }

        return scopes;
    }

    private JsonObject? ReadLine(string line, int offset, List<(int Start, int Length, string Scope)> scopes)
    {
        var at = 0;
        while (First(line, at) is var (pattern, match))
        {
            foreach (var (number, scope) in (pattern["captures"] ?? pattern["beginCaptures"])?.AsObject() ?? [])
            {
                var group = match.Groups[int.Parse(number, System.Globalization.CultureInfo.InvariantCulture)];
                scopes.Add((offset + group.Index, group.Length, scope!["name"]!.GetValue<string>()));
            }

            if (pattern["name"] is { } name)
            {
                scopes.Add((offset + match.Index, match.Length, name.GetValue<string>()));
            }

            if (pattern["begin"] is not null)
            {
                return pattern;
            }

            at = Math.Max(match.Index + match.Length, at + 1);
        }

        return null;
    }

    private (JsonObject Pattern, Match Match)? First(string line, int at)
    {
        (JsonObject Pattern, Match Match)? best = null;
        foreach (var pattern in grammar["patterns"]!.AsArray().SelectMany(Open).Where(_ => at <= line.Length))
        {
            var match = new Regex((pattern["match"] ?? pattern["begin"])!.GetValue<string>(), RegexOptions.None, TimeSpan.FromSeconds(1)).Match(line, at);
            if (match is { Success: true, Length: > 0 } && (best is null || match.Index < best.Value.Match.Index))
            {
                best = (pattern, match);
            }
        }

        return best;
    }

    private IEnumerable<JsonObject> Open(JsonNode? pattern) => pattern!["include"] is { } include
        ? grammar["repository"]![include.GetValue<string>()[1..]]!["patterns"]!.AsArray().Select(one => one!.AsObject())
        : [pattern.AsObject()];
}
