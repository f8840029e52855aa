using System.Globalization;
using System.Text.Json;

namespace ScoreRules.Tests.Support;

/// <summary>Holds a JSON document to a schema, as far as our schemas go: type, properties, required, items, additionalProperties.</summary>
internal static class SchemaCheck
{
    /// <summary>Where and how a document breaks its schema; empty when it does not.</summary>
    public static IReadOnlyList<string> Faults(string json, string schema)
    {
        using var document = JsonDocument.Parse(json);
        using var rules = JsonDocument.Parse(schema);
        return [.. Faults(document.RootElement, rules.RootElement, "$")];
    }

    private static IEnumerable<string> Faults(JsonElement value, JsonElement schema, string at)
    {
        if (schema.ValueKind != JsonValueKind.Object)
        {
            yield break;
        }

        if (schema.TryGetProperty("type", out var type) && !Types(type).Any(name => Is(value, name)))
        {
            yield return $"{at} is {value.ValueKind}, not {type.GetRawText()}";
        }

        foreach (var fault in value.ValueKind switch
        {
            JsonValueKind.Object => Members(value, schema, at),
            JsonValueKind.Array when schema.TryGetProperty("items", out var items) => value.EnumerateArray().SelectMany((item, index) => Faults(item, items, $"{at}[{index.ToString(CultureInfo.InvariantCulture)}]")),
            _ => [],
        })
        {
            yield return fault;
        }
    }

    private static IEnumerable<string> Members(JsonElement value, JsonElement schema, string at)
    {
        if (schema.TryGetProperty("required", out var required))
        {
            foreach (var name in required.EnumerateArray().Select(name => name.GetString()!).Where(name => !value.TryGetProperty(name, out _)))
            {
                yield return $"{at} has no {name}";
            }
        }

        foreach (var member in value.EnumerateObject())
        {
            foreach (var fault in Member(member, schema, $"{at}.{member.Name}"))
            {
                yield return fault;
            }
        }
    }

    private static IEnumerable<string> Member(JsonProperty member, JsonElement schema, string at) =>
        schema.TryGetProperty("properties", out var properties) && properties.TryGetProperty(member.Name, out var known) ? Faults(member.Value, known, at)
        : !schema.TryGetProperty("additionalProperties", out var others) ? []
        : others.ValueKind == JsonValueKind.False ? [$"{at} is not described"]
        : Faults(member.Value, others, at);

    private static IEnumerable<string> Types(JsonElement type) => type.ValueKind == JsonValueKind.Array ? type.EnumerateArray().Select(name => name.GetString()!) : [type.GetString()!];

    private static bool Is(JsonElement value, string type) => type switch
    {
        "object" => value.ValueKind == JsonValueKind.Object,
        "array" => value.ValueKind == JsonValueKind.Array,
        "string" => value.ValueKind == JsonValueKind.String,
        "boolean" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
        "null" => value.ValueKind == JsonValueKind.Null,
        "integer" => value.ValueKind == JsonValueKind.Number && value.TryGetInt64(out _),
        _ => value.ValueKind == JsonValueKind.Number,
    };
}
