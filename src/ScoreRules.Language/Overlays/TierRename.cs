using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>Lets what names a tier follow when the tier is called something else.</summary>
internal static class TierRename
{
    private static readonly ImmutableArray<ClaimKind> AboutTiers = [ClaimKind.InTier, ClaimKind.NoHigher, ClaimKind.NoLower, ClaimKind.HasAtLeast, ClaimKind.HasAtMost];

    /// <summary>The statement with the new name; null when it does not name the tier.</summary>
    public static StatementSyntax? Apply(StatementSyntax statement, NameSyntax old, NameSyntax renamed, StatementSyntax change)
    {
        var mentions = Mentions(statement).Where(name => name.Key == old.Key).OrderBy(name => name.Span.Start).ToList();
        if (mentions.Count == 0)
        {
            return null;
        }

        var composer = new StatementComposer(statement);
        var at = statement.Span.Start;
        foreach (var mention in mentions)
        {
            composer.Copy(statement, Text.SourceSpan.FromBounds(at, mention.Span.Start));
            composer.Copy(change, renamed.Span);
            at = mention.Span.End;
        }

        composer.Copy(statement, Text.SourceSpan.FromBounds(at, statement.Span.End));
        return composer.ToStatement(statement.IsWhole);
    }

    private static IEnumerable<NameSyntax> Mentions(StatementSyntax statement) =>
        (statement.First switch
        {
            ClauseSyntax<NameSyntax> { Content: { } tier } when statement.Spec == RuleGrammar.NeverAbove || statement.Spec == RuleGrammar.NeverBelow => [tier],
            ClauseSyntax<LiftSyntax> { Content.Tier: { } tier } => [tier],
            ClauseSyntax<ClaimSyntax> { Content: { } claim } when AboutTiers.Contains(claim.Kind) => claim.Objects,
            _ => ImmutableArray<NameSyntax>.Empty,
        }).Concat(statement.All(AskGrammar.ToTier).Select(line => line.Content));
}
