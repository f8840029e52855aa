using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Layout;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Checks that the lines of a change fit what they change, and takes its dates apart.</summary>
internal sealed class ChangeLines(OverlayFindings report, Ledger ledger)
{
    private static readonly ImmutableArray<ClauseSpec> OfOneHouse = [HouseGrammar.Version, HouseGrammar.BuildsOn, HouseGrammar.WrittenBy, HouseGrammar.Checked];
    private static readonly ImmutableArray<ClauseSpec> Remarks = [Uniform.Because, Uniform.Note, Uniform.Source];

    /// <summary>
    /// The parts of a change that have an effect on a statement; one that does not fit is reported and has none. Null when the change
    /// has none; a word that is given another meaning has its effect in the first line.
    /// </summary>
    public ImmutableArray<LinePart>? Of(StatementSyntax change, StatementSyntax thing)
    {
        var parts = LineParts.Of(change, thing.Spec == RuleGrammar.WorkOut);
        var fitting = parts.ToList();
        foreach (var part in parts)
        {
            if (WhyNot(part, parts, change.Source, thing) is { } fault)
            {
                report.Report("SR2111", fault.Headline, change, part.Span, "does not fit", [new Label(thing.HeadLocation, "what is changed")], new Suggestion(fault.Advice));
                ledger.Doubt(part.Clause is ClauseSyntax<ChangedTierSyntax> tier ? [tier] : []);
                fitting.Remove(part);
            }
        }

        if (parts.All(part => part.Clause.Spec == Uniform.Note) && change.First is not ClauseSyntax<SaySyntax> && change.IsWhole)
        {
            report.Report("SR2111", "This change changes nothing", change, null, "no line below it", [new Label(thing.HeadLocation, "what is changed")], new Suggestion("set in below it, write the lines that shall stand in place of the old ones"));
            return null;
        }

        var effective = WithoutDates([.. fitting], change);
        return effective.IsEmpty && change.First is not ClauseSyntax<SaySyntax> ? null : effective;
    }

    private static (string Headline, string Advice)? WhyNot(LinePart part, ImmutableArray<LinePart> all, SourceText source, StatementSyntax thing)
    {
        var spec = part.Clause.Spec;
        if (spec == Uniform.Named)
        {
            return ("A change cannot give a rule another name", "drop the rule and say it anew, under the new name");
        }

        if (thing.Spec == HouseGrammar.Ruleset && OfOneHouse.Contains(spec))
        {
            return ($"\"{spec.Starter}\" is said by each house of itself", "write it in the ruleset of this house");
        }

        if (part.Clause is ClauseSyntax<ChangedWeightSyntax> weight)
        {
            return WhyNotWeight(weight.Content, all, thing);
        }

        if (part.Clause is ClauseSyntax<ChangedTierSyntax> tier)
        {
            return thing.All(VocabularyGrammar.Tier).Any(line => line.Content.Name.Key == tier.Content.Name.Key) ? WhyNotName(tier.Content.NewName, source, thing)
                : ($"There is no tier \"{tier.Content.Name.Text}\" to change", $"tiers are {string.Join(", ", thing.All(VocabularyGrammar.Tier).Select(line => line.Content.Name.Text))}; for other tiers, drop the tiers and list them anew");
        }

        return Fits(spec, thing.Spec) ? null : ($"\"{thing.Spec.Words}\" has no line \"{spec.Starter}\"", $"lines that may stand there: {string.Join(", ", LinesOf(thing.Spec))}");
    }

    // "Swap is now called we are sure": below "tiers", such words begin a line of another kind.
    private static (string Headline, string Advice)? WhyNotName(NameSyntax? name, SourceText source, StatementSyntax thing) =>
        name is not null && StarterTables.LinesOf(thing.Spec).Match(source.Text, name.Span) is { } line
            ? ($"A tier called \"{name.Text}\" would read like a line \"{line.Value.Spec.Starter}\"", "choose another name, or put this one in double quotes")
            : null;

    private static (string Headline, string Advice)? WhyNotWeight(ChangedWeightSyntax weight, ImmutableArray<LinePart> all, StatementSyntax thing)
    {
        if (weight.Factor is null)
        {
            return null;
        }

        return all.Count(part => part.Clause is ClauseSyntax<ChangedWeightSyntax>) > 1 ? ("A weight is given anew and multiplied in one change", "write either new weights or how many times as much it counts")
            : thing.All(ScoringGrammar.Counts).Any(line => line.Content.Value?.First is null) ? ("A weight that is no number cannot be multiplied", "write the new weight, such as \"counts 12\"")
            : null;
    }

    private static bool Fits(ClauseSpec spec, HeadSpec thing) =>
        spec == OverlayGrammar.Points ? thing == RuleGrammar.Give || thing == RuleGrammar.Take
        : spec == OverlayGrammar.NeverAbove ? thing == RuleGrammar.NeverAbove
        : spec == OverlayGrammar.NeverBelow ? thing == RuleGrammar.NeverBelow
        : thing.Lines.Any(use => use.Spec == spec);

    private static IEnumerable<string> LinesOf(HeadSpec thing) =>
        new[] { OverlayGrammar.Points, OverlayGrammar.NeverAbove, (ClauseSpec)OverlayGrammar.NeverBelow }.Where(spec => Fits(spec, thing)).Concat(thing.Lines.Select(use => use.Spec))
            .Where(spec => spec.Starter.Length > 0 && spec != Uniform.Named).Select(spec => spec.Starter).Take(8);

    /// <summary>
    /// Whether the dates of a change are those of the thing, because it says nothing else: <c>change movement leg press</c> and
    /// <c>from 1 June 2032</c>. Otherwise they say when the change itself is in force.
    /// </summary>
    public static bool DatesTheThing(StatementSyntax change) =>
        OverlayGrammar.KindOf(change.Spec) is { IsDrop: false } && change.First is not ClauseSyntax<SaySyntax>
        && change.Lines.Any(IsDate) && change.Lines.All(line => IsDate(line) || Remarks.Contains(line.Spec));

    private static ImmutableArray<LinePart> WithoutDates(ImmutableArray<LinePart> parts, StatementSyntax change) =>
        DatesTheThing(change) ? parts : parts.RemoveAll(part => IsDate(part.Clause));

    private static bool IsDate(ClauseSyntax line) => line.Spec == Uniform.From || line.Spec == Uniform.Until;
}
