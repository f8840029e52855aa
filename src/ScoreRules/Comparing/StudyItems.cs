using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>Studies, and how they are weighed, as things to compare. A study that is only shown moves nothing and is left away.</summary>
internal static class StudyItems
{
    /// <summary>All of them.</summary>
    public static IEnumerable<ComparedItem> Of(BoundRuleset ruleset)
    {
        if (ruleset.Evidence is { } evidence)
        {
            yield return new ComparedItem(RuleBlock.Evidence, "evidence", Says(evidence), evidence.Info.Title, Place(evidence)) { Statement = evidence };
        }

        foreach (var study in ruleset.Studies.Where(study => study.Strength != StudyStrength.Show && !study.IsWithdrawn(ruleset.Date)))
        {
            yield return new ComparedItem(RuleBlock.Evidence, $"study {NameText.Key(study.Name)}", Says(study), study.Info.Title, Place(study)) { Statement = study };
        }
    }

    private static SourceLocation Place(BoundStatement statement) => statement.Info.Amendments.LastOrDefault()?.Place ?? statement.Info.Location;

    private static string Says(EvidenceDefinition evidence) => Saying.Joined(
    [
        Number(evidence.PrinciplesMayBeOff), Saying.Of(evidence.StandardDeviationIsWorth), Number(evidence.LoneStudyAdds), Number(evidence.SpreadsAt), $"{evidence.FreezesBenchmarks}",
        .. evidence.Ignores.Select(NameText.Key).Order(StringComparer.Ordinal),
    ]);

    private static string Says(StudyDefinition study) => Saying.Joined(
    [
        $"{study.Level} {study.Strength} {study.Design} {NameText.Key(study.Outcome)} {NameText.Key(study.Attribute?.Name ?? "")} {NameText.Key(study.Criterion ?? "")}",
        $"{Number(study.People)} {Saying.Of(study.Trust)}",
        .. study.Findings.Select(finding => $"{NameText.Key(finding.First)} {finding.Verdict} {NameText.Key(finding.Second)} {Saying.Of(finding.Amount)} {finding.Unit} {Saying.Joined(finding.Regions.Select(NameText.Key))}"),
        Saying.Of(study.Info),
    ]);

    private static string Number(double? number) => number is { } said ? Saying.Of(said) : "";
}
