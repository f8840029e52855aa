using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>Says which compulsory lines a statement lacks.</summary>
internal sealed class MissingLines(StatementBuilder statement, SourceText source, DiagnosticBag findings, List<ClauseSyntax> lines)
{
    /// <summary>Reports all that is missing, one finding each.</summary>
    public void Report()
    {
        foreach (var use in statement.Spec.Lines.Where(use => use.Required && !Has(use.Spec)))
        {
            Add("SR1007", $"{statement.Title} has no line {Quoted(use.Spec)}", new Suggestion($"add a line {Quoted(use.Spec)} below it"));
        }

        if (!statement.Spec.OneOf.IsEmpty && !statement.Spec.OneOf.Any(Has))
        {
            var choices = string.Join(", ", statement.Spec.OneOf.Select(Quoted));
            Add("SR1007", $"{statement.Title} needs one more line", new Suggestion($"add one of: {choices}"));
        }

        ReportReach();
        foreach (var group in statement.Spec.OnlyOne)
        {
            ReportContradiction(group);
        }
    }

    private void ReportContradiction(Alternatives group)
    {
        if (lines.Where(line => group.Lines.Contains(line.Spec)).Take(2).ToList() is not [var first, var second])
        {
            return;
        }

        findings.Add(new Diagnostic("SR1021", Severity.Error, $"Only one {group.What} can be meant", new Label(source.At(second.Span), "the second one"))
        {
            Within = statement.Title,
            Section = statement.Section,
            Others = [new Label(source.At(first.Span), "the first one")],
            Suggestions = [new Suggestion("keep one of them")],
        });
    }

    private static string Quoted(ClauseSpec spec) => spec.Starter.Length == 0 ? "that starts with a name" : $"\"{spec.Starter}\"";

    private void ReportReach()
    {
        var conditions = lines.Where(line => line.Spec == Reach.When || line.Spec == Reach.Unless).ToList();
        var always = lines.Find(line => line.Spec == Reach.Always);
        if (statement.Spec.NeedsReach && conditions.Count == 0 && always is null)
        {
            var all = statement.Spec.Lines.Any(use => use.Spec == Reach.Always);
            Add("SR1015", "Nothing says which movements this is about", new Suggestion(all ? "add a line \"when ...\", or \"always\" for every movement" : "add a line \"when ...\""));
        }
        else if (conditions.Count > 0 && always is not null)
        {
            findings.Add(new Diagnostic("SR1021", Severity.Error, "\"always\" and a condition cannot both be meant", new Label(source.At(always.Span), "says every movement"))
            {
                Within = statement.Title,
                Section = statement.Section,
                Others = [new Label(source.At(conditions[0].Span), "says only some")],
                Suggestions = [new Suggestion("keep one of them")],
            });
        }
    }

    private bool Has(ClauseSpec spec) => lines.Exists(line => line.Spec == spec);

    private void Add(string code, string headline, Suggestion suggestion) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(source.At(statement.First!.Span), "this statement"))
        {
            Within = statement.Title,
            Section = statement.Section,
            Suggestions = [suggestion],
        });
}
