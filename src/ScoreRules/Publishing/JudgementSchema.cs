using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing;

/// <summary>JSON Schemas of the JSON forms, made from the types that are written.</summary>
public static class JudgementSchema
{
    private static readonly JsonSchemaExporterOptions Options = new()
    {
        TreatNullObliviousAsNonNullable = true,
        TransformSchemaNode = Closed,
    };

    /// <summary>All schemas by the name of their command.</summary>
    public static ImmutableArray<(string Name, string Schema)> All { get; } =
    [
        ("check", Export(OutputContext.Default.CheckDocument, "Findings of one or more houses")),
        ("explain", Export(OutputContext.Default.ExplainDocument, "Explanations of one movement")),
        ("derive", Export(OutputContext.Default.DeriveDocument, "What mechanics derives for one movement")),
        ("words", Export(OutputContext.Default.WordsDocument, "The words that a house's text may use")),
        ("test", Export(OutputContext.Default.TestDocument, "What became of a house's expectations")),
        ("choose", Export(OutputContext.Default.ChooseDocument, "Choices of a few movements that go together")),
        ("ask", Export(OutputContext.Default.AskDocument, "Answers to questions about a house")),
        ("studies", Export(OutputContext.Default.StudiesDocument, "Studies of a house against its principles")),
        ("edition", Export(OutputContext.Default.EditionDocument, "The contents of a published edition")),
        ("verify", Export(OutputContext.Default.VerifyDocument, "Whether published editions are what their rules say")),
        ("compare", Export(OutputContext.Default.CompareDocument, "What differs between two houses")),
        ("rank", Export(OutputContext.Default.RankDocument, "Rankings of a house")),
    ];

    private static string Export(JsonTypeInfo type, string title)
    {
        var body = type.GetJsonSchemaAsNode(Options).AsObject();
        var schema = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = title };
        foreach (var (name, value) in body.ToList())
        {
            body.Remove(name);
            schema[name] = value;
        }

        return schema.ToJsonString(new JsonSerializerOptions { WriteIndented = true, NewLine = "\n" }) + "\n";
    }

    // Nothing but the described members is ever written.
    private static JsonNode Closed(JsonSchemaExporterContext context, JsonNode schema)
    {
        if (schema is JsonObject { } node && node.ContainsKey("properties"))
        {
            node["additionalProperties"] = false;
            LeaveOutWhatMayBeNull(node, context.TypeInfo);
        }

        return schema;
    }

    // Members that are null are not written, so a reader cannot count on them.
    private static void LeaveOutWhatMayBeNull(JsonObject node, JsonTypeInfo type)
    {
        if (node["required"] is not JsonArray required)
        {
            return;
        }

        foreach (var name in required.ToList().Where(name => MayBeNull(node["properties"]![name!.GetValue<string>()], type, name.GetValue<string>())))
        {
            required.Remove(name);
        }

        if (required.Count == 0)
        {
            node.Remove("required");
        }
    }

    // A member whose type was described before is only a reference to that place, which does not say whether it may be null here.
    private static bool MayBeNull(JsonNode? member, JsonTypeInfo type, string name) =>
        member is JsonObject described
        && ((described["type"] is JsonArray types && types.Any(one => one?.GetValue<string>() == "null"))
            || (described.ContainsKey("$ref") && type.Properties.FirstOrDefault(property => property.Name == name) is { } property && (property.IsGetNullable || Nullable.GetUnderlyingType(property.PropertyType) is not null)));
}
