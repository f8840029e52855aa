using System.Collections;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Syntax;

/// <summary>Finds every name in a tree, whatever record holds it.</summary>
internal static class Names
{
    public static IEnumerable<SourceSpan> In(FileSyntax file) =>
        file.Statements.SelectMany(statement => statement.Lines.Prepend(statement.First!)).SelectMany(line => Walk(line, 0)).Select(name => name.Span);

    private static IEnumerable<NameSyntax> Walk(object? node, int depth)
    {
        if (node is NameSyntax name)
        {
            return [name];
        }

        if (node is null or string or ClauseSpec or SourceSpan || depth > 8 || node.GetType().IsPrimitive || node.GetType().IsEnum)
        {
            return [];
        }

        if (node is IEnumerable many)
        {
            return many.Cast<object?>().SelectMany(one => Walk(one, depth + 1));
        }

        var fields = node.GetType().GetFields(System.Reflection.BindingFlags.Instance | System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.NonPublic);
        return fields.SelectMany(field => Walk(field.GetValue(node), depth + 1));
    }
}
