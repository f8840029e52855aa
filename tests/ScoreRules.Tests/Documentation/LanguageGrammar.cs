using System.Text;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Tests.Documentation;

/// <summary>The statement table in EBNF: one rule a kind of statement, made of the rules of its lines.</summary>
internal static class LanguageGrammar
{
    private static readonly Dictionary<ClauseSpec, string> NamedLines = new()
    {
        [MovementGrammar.Facts] = "fact-line",
        [VocabularyGrammar.Tier] = "tier-line",
        [ScoringGrammar.Importance] = "importance-line",
        [OverlayGrammar.Tier] = "changed-tier-line",
        [OverlayGrammar.Counts] = "changed-counts-line",
    };

    /// <summary>The rule of a line of a statement.</summary>
    public static string LineRule(ClauseSpec spec) => NamedLines.TryGetValue(spec, out var name) ? name : $"{Joined(spec.Starter)}-line";

    /// <summary>The rule of a statement's first line.</summary>
    public static string HeadRule(HeadSpec head) => $"{(head.Words.Split(' ')[0] is "change" or "drop" ? head.Words.Split(' ')[0] : Joined(head.Words))}-head";

    /// <summary>All kinds of statement.</summary>
    public static string Statements()
    {
        var text = new StringBuilder();
        var own = StatementTable.Own.Select(head => Joined(head.Words)).ToList();
        text.Append("file = { statement } ;\n").Append($"statement = {Broken(own.Append("change").Append("drop"))} ;\n\n");
        foreach (var head in StatementTable.Own)
        {
            text.Append($"{Joined(head.Words)} = {HeadRule(head)}{Body(head)} ;\n");
        }

        text.Append("change = change-head, { lines of that kind, with these | points-line | never-above-line | never-below-line | changed-counts-line | changed-tier-line | uniform-line } ;\n"
            .Replace("lines of that kind, with these", "? a line of that kind of statement ?", StringComparison.Ordinal));
        text.Append("drop = drop-head, { because-line (* needed, may repeat *) | uniform-line } ;\n");
        text.Append($"uniform-line = {Broken(Uniform.Lines.Select(use => LineRule(use.Spec)))} ;\n");
        return text.ToString();
    }

    private static string Body(HeadSpec head)
    {
        if (head.IsProse)
        {
            return ", { text }";
        }

        if (head.Lines.IsEmpty)
        {
            return "";
        }

        var own = head.Lines.Where(use => !Uniform.Lines.Contains(use)).Select(use => $"{LineRule(use.Spec)} {HowOften(head, use)}");
        return $",\n  {{ {string.Join("\n  | ", own.Append("uniform-line"))} }}";
    }

    private static string HowOften(HeadSpec head, ClauseUse use) => (Needed(head, use), use.Once) switch
    {
        ("", true) => "(* once *)",
        ("", false) => "(* may repeat *)",
        (var needed, true) => $"(* {needed}, once *)",
        var (needed, _) => $"(* {needed}, may repeat *)",
    };

    private static string Needed(HeadSpec head, ClauseUse use) =>
        use.Required ? "needed"
        : head.OneOf.Contains(use.Spec) ? "one of these is needed"
        : head.NeedsReach && (use.Spec == Reach.When || use.Spec == Reach.Unless || use.Spec == Reach.Always) ? "one of these is needed"
        : "";

    private static string Joined(string words) => words.Replace(' ', '-');

    private static string Broken(IEnumerable<string> names) => string.Join("\n  | ", names.Chunk(6).Select(chunk => string.Join(" | ", chunk)));
}
