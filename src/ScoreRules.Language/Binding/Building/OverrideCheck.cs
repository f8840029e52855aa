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
                Check(rule, other, Reaches(other, rule, named), findings);
            }
        }
    }

    // Whether overriding leads from one rule to another, directly or over others in between.
    private static bool Reaches(ConditionalStatement from, ConditionalStatement to, ILookup<string, ConditionalStatement> named)
    {
        var seen = new HashSet<ConditionalStatement>(ReferenceEqualityComparer.Instance);
        var next = new Stack<ConditionalStatement>([from]);
        while (next.TryPop(out var rule))
        {
            if (ReferenceEquals(rule, to))
            {
                return true;
            }

            foreach (var other in rule.Info.Overrides.SelectMany(name => named[NameText.Key(name)]).Where(seen.Add))
            {
                next.Push(other);
            }
        }

        return false;
    }

    private static void Check(ConditionalStatement rule, ConditionalStatement other, bool circle, DiagnosticBag findings)
    {
        var sameKind = rule.GetType() == other.GetType();
        var safety = other is CautionDefinition;
        if (sameKind && !circle && !safety)
        {
            return;
        }

        var headline = safety ? "A caution cannot be overridden" : circle ? "Rules override one another in a circle" : $"A rule of the kind \"{rule.Info.Kind}\" cannot override one of the kind \"{other.Info.Kind}\"";
        findings.Add(new Diagnostic("SR4006", Severity.Error, headline, new Label(rule.Info.Location, $"overrides \"{other.Info.Name}\""))
        {
            Within = rule.Info.Title,
            Section = rule.Info.Section,
            Others = [new Label(other.Info.Location, "the other rule")],
            Suggestions = [new Suggestion(safety ? "cautions can only be added" : "take the line \"overrides\" out of one of them")],
        });
    }
}
