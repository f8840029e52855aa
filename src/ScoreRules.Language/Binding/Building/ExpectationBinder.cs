using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds expectations.</summary>
internal sealed class ExpectationBinder(BindContext context, InfoBinder info)
{
    /// <summary>All expectations whose names could be resolved.</summary>
    public ImmutableArray<ExpectationDefinition> Bind(IEnumerable<StatementSyntax> statements) =>
        [.. statements.Where(statement => statement.Spec == QuestionGrammar.Expect && statement.First is not null).Select(BindOne).OfType<ExpectationDefinition>()];

    private ExpectationDefinition? BindOne(StatementSyntax statement)
    {
        var claim = statement.Head<ClaimSyntax>();
        var targets = claim.Targets.Select(target => context.Targets.Find(target, statement)).ToList();
        var expectation = new ExpectationDefinition(info.Bind(statement), claim.Kind) { Targets = [.. targets.OfType<TargetDefinition>()], Amount = claim.Amount?.Number ?? 0 };
        var bound = claim.Kind is ClaimKind.HasAtLeast or ClaimKind.HasAtMost ? Share(claim, expectation, statement) : AboutMovement(claim, expectation, statement);
        return targets.Contains(null) ? null : bound;
    }

    private ExpectationDefinition? AboutMovement(ClaimSyntax claim, ExpectationDefinition expectation, StatementSyntax statement)
    {
        if (context.Movements.Find(claim.Subject!, statement) is not { } movement)
        {
            return null;
        }

        expectation = expectation with { Movement = movement };
        return claim.Kind switch
        {
            ClaimKind.Above or ClaimKind.AtLeastAbove or ClaimKind.Within => Compared(claim, expectation, statement),
            ClaimKind.InTier or ClaimKind.NoHigher or ClaimKind.NoLower => Tiers(claim, expectation, statement),
            ClaimKind.LeftOut => LeftOut(claim, expectation, statement),
            _ => context.CalledFacts.Find(claim.Objects[0], statement) is { } fact ? expectation with { Reference = fact.Text } : null,
        };
    }

    private ExpectationDefinition? Compared(ClaimSyntax claim, ExpectationDefinition expectation, StatementSyntax statement)
    {
        var other = context.Movements.Find(claim.Objects[0], statement);
        if (other == expectation.Movement)
        {
            context.Error("SR3008", "A movement is compared with itself", statement, claim.Objects[0].Span, "the same movement", new Suggestion("name another movement"));
            return null;
        }

        return other is null ? null : expectation with { Other = other };
    }

    private ExpectationDefinition? Tiers(ClaimSyntax claim, ExpectationDefinition expectation, StatementSyntax statement)
    {
        var tiers = claim.Objects.Select(name => context.Tiers.Find(name, statement)).ToList();
        return tiers.Contains(null) ? null : expectation with { Tiers = [.. tiers!] };
    }

    private ExpectationDefinition? LeftOut(ClaimSyntax claim, ExpectationDefinition expectation, StatementSyntax statement)
    {
        if (claim.Objects.IsEmpty)
        {
            return expectation;
        }

        return context.Rules.Find(claim.Objects[0], statement) is { } rule ? expectation with { Reference = rule.Text } : null;
    }

    private ExpectationDefinition? Share(ClaimSyntax claim, ExpectationDefinition expectation, StatementSyntax statement)
    {
        if (claim.Amount!.Unit is not (null or "%"))
        {
            context.Error("SR3003", "A count of movements or a share in % stands here", statement, claim.Amount.Span, $"in {claim.Amount.Unit}", new Suggestion("write for example \"at least 1 in ...\" or \"at most 50% in ...\""));
            return null;
        }

        var every = claim.Subject!.Key == "every target";
        var target = every ? null : context.Targets.Find(claim.Subject, statement);
        if (!every && target is null)
        {
            return null;
        }

        var share = claim.Amount.Unit == "%";
        expectation = expectation with { IsShare = share, Amount = share ? claim.Amount.Number / 100 : claim.Amount.Number, Targets = target is null ? expectation.Targets : [target] };
        return Tiers(claim, expectation, statement);
    }
}
