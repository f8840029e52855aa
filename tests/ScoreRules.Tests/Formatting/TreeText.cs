using System.Collections;
using System.Reflection;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Formatting;

/// <summary>A tree as text without places: two texts with the same tree mean the same.</summary>
internal static class TreeText
{
    public static string Of(string text)
    {
        var file = SyntaxParser.Parse(new SourceText("tree.rules", text));
        var findings = file.Findings.Select(finding => $"{finding.Code} {finding.Headline}").Order(StringComparer.Ordinal);
        return string.Join('\n', file.Statements.Select(Statement).Concat(findings));
    }

    private static string Statement(StatementSyntax statement) =>
        $"{statement.Spec.Words} under {statement.Section} ({statement.IsWhole})\n{string.Join('\n', statement.Lines.Prepend(statement.First).Select(Clause).Concat(statement.Prose.Select(prose => "  | " + prose.Text)))}";

    private static string Clause(ClauseSyntax? clause) =>
        clause is null ? "  ?" : $"  {clause.Spec.Starter}: {Value(clause.GetType().GetProperty("Content")!.GetValue(clause), 0)}";

    private static string Value(object? value, int depth) => value switch
    {
        null or SourceSpan => "",
        string text => text,
        _ when value.GetType().IsPrimitive || value.GetType().IsEnum => Convert.ToString(value, System.Globalization.CultureInfo.InvariantCulture)!,
        _ when depth > 10 => throw new InvalidOperationException("The tree is too deep."),
        IEnumerable many => $"[{string.Join("; ", many.Cast<object?>().Select(one => Value(one, depth + 1)))}]",
        _ => $"{{{string.Join(", ", value.GetType().GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic).Select(field => Value(field.GetValue(value), depth + 1)))}}}",
    };
}
