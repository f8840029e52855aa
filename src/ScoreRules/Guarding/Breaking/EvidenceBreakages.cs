using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>How studies are weighed: each doubt halved and doubled, spreading to cousins taken out, benchmarks held or let go.</summary>
internal static class EvidenceBreakages
{
    /// <summary>All of them; none where nothing can be weighed.</summary>
    public static IEnumerable<Breakage> Of(BoundRuleset ruleset) => ruleset.Evidence is not { CanWeigh: true } said || ruleset.Studies.IsEmpty
        ? []
        :
        [
            .. Scaled("principles may be off", times => said with { PrinciplesMayBeOff = said.PrinciplesMayBeOff * times }, ruleset),
            .. Scaled("a lone study adds", times => said with { LoneStudyAdds = said.LoneStudyAdds * times }, ruleset),
            .. said.StandardDeviationIsWorth is { } worth ? Scaled("one standard deviation is worth", times => said with { StandardDeviationIsWorth = Scaling.Of(worth, times) }, ruleset) : [],
            .. said.SpreadsAt is null ? [] : (Breakage[])[Broken(BreakageKind.Deleted, "spreads to movements", said with { SpreadsAt = null }, ruleset)],
            Broken(BreakageKind.Reversed, "whether benchmarks keep their score", said with { FreezesBenchmarks = !said.FreezesBenchmarks }, ruleset),
        ];

    private static IEnumerable<Breakage> Scaled(string line, Func<double, EvidenceDefinition> with, BoundRuleset ruleset) =>
        [Broken(BreakageKind.Halved, line, with(0.5), ruleset), Broken(BreakageKind.Doubled, line, with(2), ruleset)];

    private static Breakage Broken(BreakageKind kind, string line, EvidenceDefinition broken, BoundRuleset ruleset) =>
        new(kind, $"{broken.Info.Title}, \"{line}\"", broken.Info.Location, ruleset with { Evidence = broken });
}
