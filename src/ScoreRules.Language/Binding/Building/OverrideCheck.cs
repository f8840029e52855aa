using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Checks that rules override only rules of the same kind of effect, and not one another.</summary>
internal static class OverrideCheck
{
    /// <summary>Reports what does not fit.</summary>
    public static void Report(IReadOnlyList<ConditionalStatement> rules, DiagnosticBag findings)
    {
        var named = rules.Where(rule => rule.Info.Name is not null).ToLookup(rule => NameText.Key(rule.Info.Name!), StringComparer.Ordinal);
        foreach (var rule in rules)
        {
            foreach (var other in rule.Info.Overrides.SelectMany(name => named[NameText.Key(name)]).Where(other => !ReferenceEquals(other, rule)))
            {
                Check(rule, other, findings);
            }
        }
    }

    private static void Check(ConditionalStatement rule, ConditionalStatement other, DiagnosticBag findings)
    {
        var sameKind = rule.GetType() == other.GetType();
        var mutual = rule.Info.Name is not null && other.Info.Overrides.Any(name => NameText.Same(name, rule.Info.Name));
        var safety = other is CautionDefinition;
        if (sameKind && !mutual && !safety)
        {
            return;
        }

        var headline = safety ? "A caution cannot be overridden" : mutual ? "Two rules override one another" : $"A rule of the kind \"{rule.Info.Kind}\" cannot override one of the kind \"{other.Info.Kind}\"";
        findings.Add(new Diagnostic("SR4006", Severity.Error, headline, new Label(rule.Info.Location, $"overrides \"{other.Info.Name}\""))
        {
            Within = rule.Info.Title,
            Section = rule.Info.Section,
            Others = [new Label(other.Info.Location, "the other rule")],
            Suggestions = [new Suggestion(safety ? "cautions can only be added" : "take the line \"overrides\" out of one of them")],
        });
    }
}
