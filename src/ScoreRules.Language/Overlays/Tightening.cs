using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>
/// Whether a changed cap or exclusion reaches at least all that it reached before. What cannot be shown from the text alone
/// counts as looser.
/// </summary>
internal static class Tightening
{
    private static readonly HashSet<ClauseSpec> Harmless = [Uniform.Because, Uniform.Note, Uniform.Source, Reach.When, Reach.And, Reach.OrWhen, Reach.Always, Reach.Unless, OverlayGrammar.NeverAbove];

    /// <summary>Why a change might loosen a safety rule; null when it only tightens it.</summary>
    /// <param name="before">The rule.</param>
    /// <param name="after">The rule after the change.</param>
    /// <param name="change">The change.</param>
    /// <param name="tiers">Keys of the tiers, best first.</param>
    public static string? WhyLooser(StatementSyntax before, StatementSyntax after, StatementSyntax change, IReadOnlyList<string> tiers)
    {
        if (change.Lines.FirstOrDefault(line => !Harmless.Contains(line.Spec)) is { } line)
        {
            return $"a line \"{line.Spec.Starter}\" may take movements out of its reach";
        }

        if (before.Spec == RuleGrammar.NeverAbove && Position(after, tiers) < Position(before, tiers))
        {
            return $"\"{after.Head<NameSyntax>().Text}\" is a better tier than \"{before.Head<NameSyntax>().Text}\"";
        }

        return ReachesAll(before, after) ? null : "the new condition may miss movements that the old one reaches";
    }

    private static int Position(StatementSyntax statement, IReadOnlyList<string> tiers)
    {
        var key = statement.Head<NameSyntax>().Key;
        return tiers.TakeWhile(tier => tier != key).Count();
    }

    private static bool ReachesAll(StatementSyntax before, StatementSyntax after)
    {
        var newWays = Ways(after);
        var spared = Lines(before, Reach.Unless);
        return Lines(after, Reach.Unless).TrueForAll(line => spared.Exists(old => Implies(line, old)))
            && Ways(before).TrueForAll(old => newWays.Exists(way => way.TrueForAll(demand => old.Exists(had => Implies(had, demand)))));
    }

    // Each way in is a list of lines that must all hold; "always" is one way with nothing to hold.
    private static List<List<ConditionLineSyntax>> Ways(StatementSyntax statement)
    {
        var ways = new List<List<ConditionLineSyntax>>();
        foreach (var line in statement.Lines.OfType<ClauseSyntax<ConditionLineSyntax>>().Where(line => line.Spec != Reach.Unless))
        {
            var parts = Demands(line.Content);
            if (line.Spec == Reach.And && ways.Count > 0)
            {
                ways[^1].AddRange(parts);
            }
            else
            {
                ways.Add([.. parts]);
            }
        }

        return ways.Count == 0 ? [[]] : ways;
    }

    private static List<ConditionLineSyntax> Lines(StatementSyntax statement, ClauseSpec spec) =>
        [.. statement.Lines.Where(line => line.Spec == spec).OfType<ClauseSyntax<ConditionLineSyntax>>().Select(line => line.Content)];

    // A line of "and" is as many lines of one demand.
    private static IEnumerable<ConditionLineSyntax> Demands(ConditionLineSyntax line) =>
        line.AnyOf ? [line] : line.Atoms.Select(atom => new ConditionLineSyntax([atom], AnyOf: false, atom.Span));

    private static bool Implies(ConditionLineSyntax strong, ConditionLineSyntax weak) => strong.AnyOf
        ? strong.Atoms.All(atom => Has(weak, atom))
        : weak.AnyOf || weak.Atoms.Length == 1 ? strong.Atoms.Any(atom => Has(weak, atom)) : weak.Atoms.All(atom => strong.Atoms.Any(other => Implies(other, atom)));

    private static bool Has(ConditionLineSyntax line, AtomSyntax atom) => line.Atoms.Any(other => Implies(atom, other));

    private static bool Implies(AtomSyntax strong, AtomSyntax weak)
    {
        if (strong.Subject.Key != weak.Subject.Key || strong.Comparison != weak.Comparison)
        {
            return false;
        }

        var (first, second) = (Key(strong), Key(weak));
        return first == second || (strong is { Operands: [{ Value.First: { } high }] } && weak is { Operands: [{ Value.First: { } low }] } && high.Unit == low.Unit && strong.Comparison switch
        {
            Comparison.AtLeast or Comparison.MoreThan => low.Number <= high.Number,
            Comparison.AtMost or Comparison.LessThan => low.Number >= high.Number,
            _ => false,
        });
    }

    private static string Key(AtomSyntax atom) => string.Join(',', atom.Operands
        .Select(operand => operand.Name?.Key ?? $"{operand.Value!.First?.Number.ToString("R", System.Globalization.CultureInfo.InvariantCulture)} {operand.Value.Unit} {operand.Value.High?.Number.ToString("R", System.Globalization.CultureInfo.InvariantCulture)}")
        .Order(StringComparer.Ordinal));
}
