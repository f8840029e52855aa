using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds tiers and checks that every score falls into exactly one.</summary>
internal sealed class TierBinder(BindContext context)
{
    /// <summary>The tiers, best first.</summary>
    public ImmutableArray<TierDefinition> Bind(IEnumerable<StatementSyntax> statements)
    {
        var all = statements.Where(statement => statement.Spec == VocabularyGrammar.Tiers).ToList();
        foreach (var second in all.Skip(1))
        {
            context.Report("SR2002", Severity.Error, "Tiers are declared twice", second, second.HeadLocation.Span, "second time", [new Label(all[0].HeadLocation, "first time")], new Suggestion("keep one list of tiers"));
        }

        if (all.Count == 0)
        {
            return [];
        }

        var tiers = ImmutableArray.CreateBuilder<TierDefinition>();
        foreach (var line in all[0].All(VocabularyGrammar.Tier))
        {
            var (tier, place) = (line.Content, all[0].At(line.Span));
            var amount = tier.Cut == TierCut.Top ? tier.Amount!.Number / 100 : tier.Amount?.Number ?? 0;
            var definition = new TierDefinition(tier.Name.Text, tiers.Count, tier.Cut, amount, place);
            if (context.Tiers.Declare(tier.Name, all[0], definition))
            {
                tiers.Add(definition);
            }
        }

        Check(all[0], tiers.ToImmutable());
        return tiers.ToImmutable();
    }

    private void Check(StatementSyntax statement, ImmutableArray<TierDefinition> tiers)
    {
        var kinds = tiers.Where(tier => tier.Cut != TierCut.Rest).Select(tier => tier.Cut switch { TierCut.Score => "scores", TierCut.Top => "shares", _ => "gaps to the benchmark" }).Distinct(StringComparer.Ordinal).ToList();
        if (kinds.Count > 1)
        {
            context.Error("SR5010", $"Tiers are cut by {string.Join(" and by ", kinds)} at once", statement, statement.HeadLocation.Span, "", new Suggestion("cut all of them in one way"));
            return;
        }

        for (var i = 1; i < tiers.Length; i++)
        {
            CheckPair(statement, tiers[i - 1], tiers[i]);
        }

        if (!tiers.IsEmpty && statement.IsWhole && !tiers.Any(tier => tier.Cut == TierCut.Rest))
        {
            context.Error("SR5002", "Some movements would fall in no tier", statement, tiers[^1].Location.Span, "nothing below this", new Suggestion("add a last line such as \"Special cases is the rest\""));
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
        context.Report("SR5002", Severity.Error, headline, statement, worse.Location.Span, "", [new Label(better.Location, better.Cut == TierCut.Rest ? "takes all that is left" : "the better tier")], new Suggestion(advice));
}
