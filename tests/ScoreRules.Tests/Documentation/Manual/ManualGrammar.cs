using System.Text;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Tests.Documentation.Manual;

/// <summary>Writes the statement table as EBNF: two rules for each kind of statement, its lines with how often they may stand.</summary>
internal static class ManualGrammar
{
    private const int RemarkColumn = 66;

    /// <summary>The kinds of statement that a heading of the manual is about.</summary>
    public static IEnumerable<HeadSpec> Heads(string heading) => heading switch
    {
        "change" or "drop" => StatementTable.All.Where(head => head.Words.StartsWith(heading + " ", StringComparison.Ordinal)),
        _ => StatementTable.Own.Where(head => heading.Split(", ").Contains(head.Words, StringComparer.Ordinal)),
    };

    /// <summary>The rules of one kind of statement.</summary>
    public static string Print(HeadSpec head)
    {
        var text = new StringBuilder();
        var first = ClauseForms.Line(head.FirstLine);
        var lines = head.IsProse ? "{ set in, text, end of line }" : head.Lines.IsEmpty ? "" : $"{{ set in, {LinesOf(head)}, end of line }}";
        var remark = head.Lines.Any(use => use.Required && use.Spec == Uniform.Because) ? "    (* \"because\" must stand *)\n" : "";
        text.Append(head.Words).Append(" = ").Append(first).Append(", end of line").Append(lines.Length == 0 ? "" : $",\n    {lines}").Append(" ;\n").Append(remark);
        return text.Append(OwnLines(head)).ToString();
    }

    /// <summary>The lines that mean the same in every statement.</summary>
    public static string Shared() => Rule("shared line", [.. Uniform.Lines.Select(use => (ClauseForms.Line(use.Spec), Often(use)))]);

    /// <summary>The lines that say which movements a statement is about.</summary>
    public static string Conditions() => Rule("condition line", [.. Reach.Lines.Select(use => (ClauseForms.Line(use.Spec), Often(use)))]);

    /// <summary>All kinds of statement, and all units.</summary>
    public static string Whole() =>
        Rule("statement", [.. StatementTable.All.Select(head => (head.Words, LanguageManual.IsRefused(head) ? "read, and refused: cautions stay" : ""))])
        + $"unit = {string.Join(" | ", Units.All.Append("%").Append("°").Select(unit => $"\"{unit}\""))} ;\n";

    /// <summary>What the rule of the lines of a kind of statement is called.</summary>
    public static string LinesOf(HeadSpec head) => OwnUses(head).Length == 0 ? "shared line"
        : OverlayGrammar.KindOf(head)?.Of is { } kind && Differing(head, kind).Length == 0 ? LinesOf(kind)
        : $"{head.Words} line";

    // "change" takes the lines of what it changes, none of them compulsory, and a few of its own.
    private static ClauseUse[] Differing(HeadSpec head, HeadSpec kind) => [.. OwnUses(head).Where(use => !kind.Lines.Any(same => same.Spec == use.Spec))];

    private static ClauseUse[] OwnUses(HeadSpec head) => [.. head.Lines.Where(use => !Array.Exists([.. Uniform.Lines], shared => shared.Spec == use.Spec))];

    private static string OwnLines(HeadSpec head)
    {
        if (head.IsProse || LinesOf(head) != $"{head.Words} line")
        {
            return "";
        }

        if (OverlayGrammar.KindOf(head)?.Of is { } kind)
        {
            return Rule($"{head.Words} line", [.. Differing(head, kind).Select(use => (ClauseForms.Line(use.Spec), "")), (LinesOf(kind), "")]);
        }

        var own = OwnUses(head);
        var reach = head.NeedsReach ? "\"when\", \"unless\" or \"always\" must stand" : "";
        var condition = IsCondition(head, Reach.When) ? [("condition line", reach)] : Array.Empty<(string, string)>();
        var others = own.Where(use => !IsCondition(head, use.Spec)).Select(use => (ClauseForms.Line(use.Spec), Often(use, head)));
        return Rule($"{head.Words} line", [.. condition, .. others, ("shared line", "")]);
    }

    // Only what takes every line of a condition is told in short.
    private static bool IsCondition(HeadSpec head, ClauseSpec spec) =>
        Reach.Lines.Any(line => line.Spec == spec) && Reach.Lines.All(line => head.Lines.Any(own => own.Spec == line.Spec));

    private static string Rule(string name, (string Form, string Remark)[] alternatives)
    {
        var text = new StringBuilder(name).Append("\n    = ");
        for (var i = 0; i < alternatives.Length; i++)
        {
            var (form, remark) = alternatives[i];
            text.Append(i == 0 ? "" : "    | ").Append(remark.Length == 0 ? form : $"{form.PadRight(RemarkColumn)} (* {remark} *)").Append('\n');
        }

        return text.Append("    ;\n").ToString();
    }

    private static string Often(ClauseUse use, HeadSpec? head = null) =>
        head?.NeedsReach == true && (use.Spec == Reach.When || use.Spec == Reach.Unless) ? "one of \"when\" and \"unless\" must stand"
        : head is { OneOf.IsEmpty: false } && head.OneOf.Contains(use.Spec) ? use.Once ? "one of these must stand" : "one of these must stand, more may"
        : (use.Required, use.Once) switch
        {
            (true, true) => "exactly once",
            (true, false) => "at least once",
            (false, true) => "at most once",
            _ => "any number",
        };
}
