using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Evidence;

/// <summary>Warns of studies that cannot have the effect that was meant, and of rules that they speak against.</summary>
public static class EvidenceFindings
{
    /// <summary>Reports them.</summary>
    public static void Report(BoundRuleset ruleset, EvidenceTable table, DiagnosticBag findings)
    {
        ReportNoScale(ruleset, table, findings);
        foreach (var study in ruleset.Studies.Where(study => table.NotCounted.Any(entry => entry.Study == study && entry.Reason == NotCountedReason.ClassesAlike)))
        {
            ReportPaidClass(study, ruleset, findings);
        }

        ReportMixedDesigns(table, findings);
    }

    private static void ReportNoScale(BoundRuleset ruleset, EvidenceTable table, DiagnosticBag findings)
    {
        var without = table.NotCounted.Where(entry => entry.Reason is NotCountedReason.NoScale or NotCountedReason.NoWorthOfDeviation or NotCountedReason.Percent).Select(entry => entry.Study).ToList();
        if (without.Count == 0)
        {
            return;
        }

        var lacks = ruleset.Evidence is not { } evidence ? "an \"evidence\" statement with the lines \"principles may be off by\" and \"a lone study adds\""
            : evidence.PrinciplesMayBeOff is null ? "the line \"principles may be off by\", such as 5 points"
            : evidence.LoneStudyAdds is null ? "the line \"a lone study adds\", such as 3 points of doubt"
            : "the line \"one standard deviation is worth\", such as 18 points, and differences in sd or points";
        findings.Add(new Diagnostic("SR6011", Severity.Warning, without.Count == 1 ? $"Study \"{without[0].Name}\" is to be weighed, and cannot be" : $"{without.Count} studies are to be weighed, and cannot be", new Label(without[0].Info.Location, "shown only"))
        {
            Others = ruleset.Evidence is { } said ? [new Label(said.Info.Location, "how studies are weighed")] : [],
            Suggestions = [new Suggestion($"add {lacks}"), new Suggestion("or write \"show it\" in the study")],
        });
    }

    // A rule that pays for a class as such asks for that class and for nothing else.
    private static void ReportPaidClass(StudyDefinition study, BoundRuleset ruleset, DiagnosticBag findings)
    {
        foreach (var award in ruleset.Awards.Where(award => award.Points != 0 && AsksOnly(award.Condition, study)))
        {
            findings.Add(new Diagnostic("SR6012", Severity.Warning, $"{award.Info.Title} pays for a class that study \"{study.Name}\" found no better", new Label(award.Info.Location, $"{award.Points:+0.##;-0.##} points for being one".Replace(',', '.')))
            {
                Within = award.Info.Title,
                Section = award.Info.Section,
                Others = [new Label(study.Findings[0].Location, "about the same")],
                Suggestions = [new Suggestion("take the rule out, or say what it is about the class that helps"), new Suggestion("or write \"show it\" in the study, with the reason")],
            });
        }
    }

    private static bool AsksOnly(Condition condition, StudyDefinition study)
    {
        var tests = ConditionWalk.Tests(condition).ToList();
        return tests.Count > 0 && tests.TrueForAll(test => test is AttributeTest about && about.Attribute == study.Attribute);
    }

    private static void ReportMixedDesigns(EvidenceTable table, DiagnosticBag findings)
    {
        var told = new HashSet<StudyDefinition>(ReferenceEqualityComparer.Instance);
        var claims = table.Targets.SelectMany(target => target.Claims).Where(claim => claim.Lines.Any(line => line.Unit == "sd"));
        foreach (var pair in claims.GroupBy(claim => Sides.Of(claim.First, claim.Second)))
        {
            var (within, between) = (pair.FirstOrDefault(claim => claim.Study.Design == StudyDesign.WithinPerson), pair.FirstOrDefault(claim => claim.Study.Design == StudyDesign.BetweenGroups));
            if (within is not null && between is not null && told.Add(within.Study))
            {
                findings.Add(new Diagnostic("SR6013", Severity.Warning, $"Standard deviations within people and between groups are weighed side by side for {pair.Key.Item1} and {pair.Key.Item2}", new Label(within.Study.Info.Location, "within person"))
                {
                    Others = [new Label(between.Study.Info.Location, "between groups")],
                    Notes = ["the same people twice differ by less than two groups do, so one standard deviation is not the same in both; they are not pooled"],
                    Suggestions = [new Suggestion("tell one of the two in points, or accept this with the reason")],
                });
            }
        }
    }
}
