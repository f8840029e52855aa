using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Studies that may move something: taken out, what they found halved, doubled or the other way round, allowed to do more or less.</summary>
internal static class StudyBreakages
{
    /// <summary>All of them. Studies that are only shown move nothing and are left alone.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) =>
        Slot<StudyDefinition>.Of(ruleset.Studies, studies => ruleset with { Studies = studies })
            .Where(slot => slot.Statement.Strength != StudyStrength.Show && !slot.Statement.IsWithdrawn(ruleset.Date)).SelectMany(Of);

    private static IEnumerable<Breakage> Of(Slot<StudyDefinition> slot)
    {
        var study = slot.Statement;
        yield return slot.Broken(BreakageKind.Deleted, null);
        if (study.Findings.Any(finding => finding.Amount is not null))
        {
            yield return slot.Broken(BreakageKind.Halved, Found(study, finding => finding with { Amount = Times(finding.Amount, 0.5) }));
            yield return slot.Broken(BreakageKind.Doubled, Found(study, finding => finding with { Amount = Times(finding.Amount, 2) }));
        }

        yield return slot.Broken(BreakageKind.Reversed, Found(study, finding => finding with { First = finding.Second, Second = finding.First }));
        yield return slot.Broken(BreakageKind.MovedDown, study with { Strength = study.Strength - 1 });
        if (study.Strength != StudyStrength.Decide)
        {
            yield return slot.Broken(BreakageKind.MovedUp, study with { Strength = study.Strength + 1 });
        }
    }

    private static UncertainNumber? Times(UncertainNumber? amount, double times) => amount is null ? null : Scaling.Of(amount, times);

    private static StudyDefinition Found(StudyDefinition study, Func<StudyFinding, StudyFinding> otherwise) => study with { Findings = [.. study.Findings.Select(otherwise)] };
}
