using ScoreRules.Publishing;
using ScoreRules.Tests.Support;
using Xunit;

namespace ScoreRules.Tests.Publishing;

/// <summary>The files in <c>docs/schema</c> are what the types say; SCORERULES_REWRITE=1 rewrites them.</summary>
public sealed class SchemaTests
{
    [Fact]
    public void Published_schemas_are_those_of_the_types()
    {
        foreach (var (name, schema) in JudgementSchema.All)
        {
            Golden.Check(schema, "docs", "schema", $"{name}.schema.json");
        }
    }
}
