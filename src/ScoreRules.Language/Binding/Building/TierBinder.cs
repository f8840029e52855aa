using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds tiers and checks that every score falls into exactly one.</summary>
internal sealed class TierBinder(BindContext context, InfoBinder info)
{
    /// <summary>The tiers, best first.</summary>
    public ImmutableArray<TierDefinition> Bind(IEnumerable<StatementSyntax> statements)
    {
        var all = statements.Where(statement => statement.Spec == VocabularyGrammar.Tiers).Select(statement => (Statement: statement, Info: info.Bind(statement))).ToList();
        var inForce = all.Where(tiers => tiers.Info.IsInForce(context.Day)).ToList();
        foreach (var second in inForce.Skip(1).Where(tiers => context.Day is not null || !(HasDays(tiers.Info) && HasDays(inForce[0].Info))))
        {
            context.Report("SR2002", Severity.Error, "Tiers are declared twice", second.Statement, second.Info.Location, "second time", [new Label(inForce[0].Info.Location, "first time")], new Suggestion("keep one list of tiers"));
        }

        var tiers = inForce.Count == 0 ? [] : Declare(inForce[0].Statement, (name, tier) => context.Tiers.Declare(name, inForce[0].Statement, tier));
        foreach (var (statement, said) in all.Except(inForce))
        {
            Declare(statement, (name, tier) =>
            {
                context.Tiers.DeclareAbsent(name, statement, tier, context.Day!.Value);
                return true;
            });
            context.Absent.Add(said);
        }

        if (inForce.Count == 0 && all.Count > 0)
        {
            context.Findings.Add(Absences.NoTiers(all[0].Info.Location, context.Day!.Value));
        }

        return tiers;
    }

    private static bool HasDays(StatementInfo info) => info.From is not null || info.Until is not null;

    private ImmutableArray<TierDefinition> Declare(StatementSyntax statement, Func<NameSyntax, TierDefinition, bool> declare)
    {
        var tiers = ImmutableArray.CreateBuilder<TierDefinition>();
        foreach (var line in statement.All(VocabularyGrammar.Tier))
        {
            var tier = line.Content;
            var amount = tier.Cut == TierCut.Top ? tier.Amount!.Number / 100 : tier.Amount?.Number ?? 0;
            var definition = new TierDefinition(tier.Name.Text, tiers.Count, tier.Cut, amount, statement.At(line.Span));
            if (declare(tier.Name, definition))
            {
                tiers.Add(definition);
            }
        }

        Check(statement, tiers.ToImmutable());
        return tiers.ToImmutable();
    }

    private void Check(StatementSyntax statement, ImmutableArray<TierDefinition> tiers)
    {
        var kinds = tiers.Where(tier => tier.Cut != TierCut.Rest).Select(tier => tier.Cut switch { TierCut.Score => "scores", TierCut.Top => "shares", _ => "gaps to the benchmark" }).Distinct(StringComparer.Ordinal).ToList();
        if (kinds.Count > 1)
        {
            context.Report("SR5010", Severity.Error, $"Tiers are cut by {string.Join(" and by ", kinds)} at once", statement, statement.HeadLocation, "", [], new Suggestion("cut all of them in one way"));
            return;
        }

        for (var i = 1; i < tiers.Length; i++)
        {
            CheckPair(statement, tiers[i - 1], tiers[i]);
        }

        if (!tiers.IsEmpty && statement.IsWhole && !tiers.Any(tier => tier.Cut == TierCut.Rest))
        {
            context.Report("SR5002", Severity.Error, "Some movements would fall in no tier", statement, tiers[^1].Location, "nothing below this", [], new Suggestion("add a last line such as \"Special cases is the rest\""));
        }
    }

    private void CheckPair(StatementSyntax statement, TierDefinition better, TierDefinition worse)
    {
        if (better.Cut == TierCut.Rest)
        {
            Report(statement, better, worse, $"Nothing is left for \"{worse.Name}\" below the rest", "move \"the rest\" to the last line");
        }
        else if (worse.Cut != TierCut.Rest && (worse.Cut == TierCut.Top ? worse.Amount <= better.Amount : worse.LowerBorder >= better.LowerBorder))
        {
            Report(statement, better, worse, $"\"{worse.Name}\" begins no lower than the better tier above it", "order the tiers from best to worst, each beginning lower than the one above");
        }
        else if (statement.IsWhole && worse.Cut == TierCut.Within && better.LowerBorder != worse.Amount)
        {
            Report(statement, better, worse, $"Gaps between {Numbers.Plain(Math.Min(worse.Amount, better.LowerBorder))} and {Numbers.Plain(Math.Max(worse.Amount, better.LowerBorder))} points fall in {(better.LowerBorder > worse.Amount ? "no tier" : "two tiers")}", "let one tier end where the next begins");
        }
    }

    private void Report(StatementSyntax statement, TierDefinition better, TierDefinition worse, string headline, string advice) =>
        context.Report("SR5002", Severity.Error, headline, statement, worse.Location, "", [new Label(better.Location, better.Cut == TierCut.Rest ? "takes all that is left" : "the better tier")], new Suggestion(advice));
}
