using System.Collections;
using System.Globalization;
using System.Reflection;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Binding;

/// <summary>
/// What a file of rule text says, as lines that can be compared: without places, free text and aliases, in an order of their
/// own, because the order of statements, lines, list items and facts means nothing. Only the steps of a recipe keep theirs.
/// </summary>
internal static class HouseMeaning
{
    // Names that are only printed, unless another statement mentions them: then a slip in one is found there.
    private static readonly HeadSpec[] Labels = [HouseGrammar.Ruleset, ScoringGrammar.Criterion, EvidenceGrammar.Study, QuestionGrammar.Profile, VocabularyGrammar.Target];

    public static string[] Of(string text) =>
        [.. SyntaxParser.Parse(new SourceText("house.rules", text)).Statements.Where(statement => !IsText(statement.Spec)).Select(Statement).Order(StringComparer.Ordinal)];

    private static bool IsText(HeadSpec spec) => spec == HouseGrammar.Note || spec == HouseGrammar.Section || spec == HouseGrammar.Philosophy;

    private static string Statement(StatementSyntax statement)
    {
        var lines = statement.Lines.Where(line => line.Spec != VocabularyGrammar.AlsoKnownAs).Select(Clause);
        var inOrder = statement.Spec == RuleGrammar.WorkOut || statement.Lines.Any(line => line is ClauseSyntax<ConditionLineSyntax>);
        var head = statement.First is null ? "?" : Labels.Contains(statement.Spec) ? statement.Spec.Words : Clause(statement.First);
        return string.Join(" / ", (inOrder ? lines : lines.Order(StringComparer.Ordinal)).Prepend(head).Where(line => line.Length > 0));
    }

    private static string Clause(ClauseSyntax clause)
    {
        var said = Value(clause.GetType().GetProperty("Content")!.GetValue(clause), 0);
        return clause is ClauseSyntax<TextSyntax> || clause.Spec == Uniform.Named || clause.Spec == EvidenceGrammar.Ignores ? "" : $"{clause.Spec.Starter} {said}";
    }

    private static string Number(QuantitySyntax? number) => number?.Number.ToString(CultureInfo.InvariantCulture) ?? "-";

    private static string Value(object? value, int depth) => value switch
    {
        null or SourceSpan or TextSyntax => "",
        NameSyntax name => name.Key,
        ValueSyntax { First: not null } number => $"{Number(number.First)} {Number(number.Spread)} {Number(number.High)} {Number(number.Likely)} {(number.Unit == "parts" ? "" : number.Unit)}",
        string text => text,
        _ when value.GetType().IsPrimitive || value.GetType().IsEnum => Convert.ToString(value, CultureInfo.InvariantCulture)!,
        _ when depth > 10 => throw new InvalidOperationException("The tree is too deep."),
        IEnumerable many => $"[{string.Join("; ", many.Cast<object?>().Select(one => Value(one, depth + 1)).Order(StringComparer.Ordinal))}]",
        _ => $"{{{string.Join(", ", value.GetType().GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic).Select(field => Value(field.GetValue(value), depth + 1)))}}}",
    };
}
