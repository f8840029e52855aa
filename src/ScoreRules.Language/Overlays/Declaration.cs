using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>What a statement declares, so that a second declaration of it in another house is noticed.</summary>
internal static class Declaration
{
    /// <summary>What it declares; null for nothing that could clash. Several statements may call one fact.</summary>
    public static string? Of(StatementSyntax statement) =>
        Things.IsSingle(statement.Spec) ? statement.Spec.Words + Scope(statement)
        : statement.First is null || statement.Spec == RuleGrammar.Call ? null
        : statement.Find(Uniform.Named) is { } named ? "rule " + named.Content.Key
        : Things.NameOf(statement) is { } name ? $"{statement.Spec.Words} {name.Key}"
        : null;

    /// <summary>The first statement of each declaration.</summary>
    public static Dictionary<string, StatementSyntax> Index(IEnumerable<StatementSyntax> statements)
    {
        var index = new Dictionary<string, StatementSyntax>(StringComparer.Ordinal);
        foreach (var statement in statements)
        {
            if (Of(statement) is { } key)
            {
                index.TryAdd(key, statement);
            }
        }

        return index;
    }

    // Weights for some targets stand beside those for all.
    private static string Scope(StatementSyntax statement) =>
        statement.Find(Uniform.OnlyFor) is { } only ? " " + string.Join(", ", only.Content.Select(name => name.Key).Order(StringComparer.Ordinal)) : "";
}
