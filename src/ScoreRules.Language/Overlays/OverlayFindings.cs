using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Words the findings about changes and drops.</summary>
/// <param name="findings">Where they go.</param>
internal sealed class OverlayFindings(DiagnosticBag findings)
{
    /// <summary>A finding about a change or drop.</summary>
    public void Report(string code, string headline, StatementSyntax amending, SourceSpan? place, string label, Label[] others, params Suggestion[] suggestions) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(place is { } span ? amending.At(span) : amending.HeadLocation, label))
        {
            Within = OverlayGrammar.KindOf(amending.Spec) is { } kind ? $"{(kind.IsDrop ? "drop" : "change")} {Things.Title(kind, amending)}"
                : Things.NameOf(amending) is { } name ? $"{amending.Spec.Words} \"{name.Text}\"" : amending.Spec.Words,
            Section = amending.Section,
            Others = [.. others],
            Suggestions = [.. suggestions],
        });

    /// <summary>Nothing of that name is there.</summary>
    public void Missing(OverlayKind kind, StatementSyntax amending, IEnumerable<string> known, StatementSyntax? own, string? note = null)
    {
        var verb = kind.IsDrop ? "drop" : "change";
        var name = Things.NameIn(amending);
        var near = name is null ? [] : NameSuggester.Nearest(name.Text, known);
        Suggestion[] ways = own is not null ? [new Suggestion("it is declared in this house itself: write there what you want")]
            : near.IsEmpty ? [new Suggestion(note ?? "scorerules words lists what the house that this one builds on declares; a house says which in its ruleset: \"builds on ...\"")]
            : [.. near.Select(other => new Suggestion($"did you mean \"{other}\"?", new TextEdit(amending.At(name!.Span), Syntax.NameQuotes.Of(other)), near.Length == 1 ? EditSafety.Safe : EditSafety.Shown))];
        var headline = kind.Of is not null && Things.IsSingle(kind.Of) ? $"No house below says \"{kind.Words}\", so there is nothing to {verb}" : $"There is no {Things.Title(kind, amending)} to {verb}";
        Report("SR2105", headline, amending, name?.Span, "not in what this house builds on", own is null ? [] : [new Label(own.HeadLocation, "this house's own")], ways);
    }

    /// <summary>A safety rule, or what it relies on, would be loosened.</summary>
    public void Loosened(StatementSyntax amending, StatementSyntax safety, string headline, string why)
    {
        var caution = safety.Spec == RuleGrammar.Caution;
        Report(caution ? "SR2109" : "SR2110", headline, amending, null, why, [new Label(safety.HeadLocation, caution ? "the caution" : "the safety rule")],
            new Suggestion(caution ? "cautions of a house stay; add cautions of your own" : "a rule that asks who somebody is can only be made stricter: a lower tier, or fewer demands; a rule of your own can add to it"));
    }

    /// <summary>A caution can be neither changed nor dropped.</summary>
    public void CautionStays(OverlayKind kind, StatementSyntax amending, IEnumerable<StatementSyntax> among)
    {
        var text = (amending.First as ClauseSyntax<TextSyntax>)?.Content.Text;
        CautionStays(kind, amending, among.FirstOrDefault(statement => statement.Spec == RuleGrammar.Caution && statement.First is not null && string.Equals(statement.Head<TextSyntax>().Text, text, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>A caution, if it was found, can be neither changed nor dropped.</summary>
    public void CautionStays(OverlayKind kind, StatementSyntax amending, StatementSyntax? caution) =>
        Report("SR2109", $"A caution cannot be {(kind.IsDrop ? "dropped" : "changed")}", amending, null, "not possible", caution is null ? [] : [new Label(caution.HeadLocation, "the caution")],
            new Suggestion("cautions of a house stay; add cautions of your own"));

    /// <summary>A change is about several statements at once.</summary>
    public void Several(Resolved change) =>
        Report("SR2108", $"There are several statements for {Things.Title(change.Kind, change.Amending)}, and the change does not say which", change.Amending, null, "which one",
            [.. change.Things.Take(3).Select(thing => new Label(thing.HeadLocation, "one of them"))], new Suggestion("drop them all, then say anew what you want"));

    /// <summary>A house declares again what a house below declares.</summary>
    public void Redeclared(StatementSyntax statement, StatementSyntax earlier, string house)
    {
        var name = statement.Find(Uniform.Named)?.Content ?? Things.NameOf(statement);
        var what = name is null ? $"\"{statement.Spec.Words}\"" : $"\"{name.Text}\"";
        var kind = statement.Has(Uniform.Named) ? "rule" : statement.Spec.Words;
        Report("SR2106", $"{what} {(name is null ? "stand" : "is declared")} in {house} already", statement, name?.Span, "declared again", [new Label(earlier.HeadLocation, $"in {house}")],
            statement.Spec == RuleGrammar.Caution || earlier.Spec == RuleGrammar.Caution ? new Suggestion("give this one another name: cautions add up, and none is changed")
            : new Suggestion($"write \"change {kind}{(name is null ? "" : " " + Syntax.NameQuotes.Of(name.Text))}\" and below it, set in, only the lines that differ"));
    }
}
