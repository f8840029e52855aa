using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>Keeps what protects people: cautions, and rules that ask who somebody is, can be added to but not weakened.</summary>
/// <param name="safety">What the houses below have of it.</param>
/// <param name="report">Where refusals go.</param>
internal sealed class SafetyGate(Reliance safety, OverlayFindings report)
{
    /// <summary>Whether a change or drop leaves alone what safety relies on; otherwise it is refused.</summary>
    public bool Allows(Resolved change)
    {
        foreach (var thing in change.Things)
        {
            if (thing.Spec == RuleGrammar.Caution)
            {
                report.CautionStays(change.Kind, change.Amending, thing);
                return false;
            }

            if (safety.ReliesOn(thing) is { } protector)
            {
                report.Loosened(change.Amending, protector, $"\"{thing.Head<NameSyntax>().Text}\" decides whom a {(protector.Spec == RuleGrammar.Caution ? "caution" : "safety rule")} reaches", "would change whom it reaches");
                return false;
            }

            if (change.Kind.IsDrop && safety.IsSafety(thing))
            {
                report.Loosened(change.Amending, thing, "A rule that asks who somebody is cannot be dropped", "dropped here");
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a statement of the house itself leaves the safety of the houses below alone; otherwise it is refused.</summary>
    public bool AllowsOwn(StatementSyntax statement)
    {
        if (statement.First is not null && safety.ReliesOn(statement) is { } protector)
        {
            report.Loosened(statement, protector, $"\"{statement.Head<NameSyntax>().Text}\" decides whom a {(protector.Spec == RuleGrammar.Caution ? "caution" : "safety rule")} of another house reaches", "would change whom it reaches");
            return false;
        }

        foreach (var name in statement.All(Uniform.Overrides).SelectMany(line => line.Content))
        {
            if (safety.Named(name.Key) is { } overridden)
            {
                report.Loosened(statement, overridden, $"\"{name.Text}\" protects people and cannot be overridden", "overridden here");
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether what a change makes of a safety rule is at least as strict; otherwise it is refused.</summary>
    public bool AllowsResult(Resolved change, StatementSyntax before, StatementSyntax after, IReadOnlyList<string> tiers)
    {
        if (!AllowsOwn(change.Amending))
        {
            return false;
        }

        if (!safety.IsSafety(before) || Tightening.WhyLooser(before, after, change.Amending, tiers) is not { } why)
        {
            return true;
        }

        report.Loosened(change.Amending, before, "A rule that asks who somebody is may only be made stricter", why);
        return false;
    }
}
