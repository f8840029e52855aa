using System.Text.Json.Serialization;

namespace ScoreRules.Publishing.Json;

/// <summary>How the documents are written: camel case, indented, text as it is.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, NewLine = "\n", DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(RankDocument))]
[JsonSerializable(typeof(ExplainDocument))]
[JsonSerializable(typeof(DeriveDocument))]
[JsonSerializable(typeof(CheckDocument))]
[JsonSerializable(typeof(TestDocument))]
[JsonSerializable(typeof(StudiesDocument))]
[JsonSerializable(typeof(WordsDocument))]
[JsonSerializable(typeof(EditionDocument))]
[JsonSerializable(typeof(VerifyDocument))]
[JsonSerializable(typeof(CompareDocument))]
[JsonSerializable(typeof(AskDocument))]
[JsonSerializable(typeof(ChooseDocument))]
internal sealed partial class OutputContext : JsonSerializerContext;
