using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>
/// Gives a house what it does not say of itself from the house it builds on. Its version, its authors and who checked it are its
/// own; whom a house is unsuitable for is added up, since that is a warning.
/// </summary>
internal static class HeaderMerger
{
    private static readonly ImmutableArray<ClauseSpec> Own = [HouseGrammar.Version, HouseGrammar.BuildsOn, HouseGrammar.WrittenBy, HouseGrammar.Checked, .. Uniform.Lines.Select(use => use.Spec)];

    /// <summary>Merges.</summary>
    /// <param name="below">The ruleset of the house below.</param>
    /// <param name="above">The ruleset of the house that builds on it.</param>
    public static StatementSyntax Merge(StatementSyntax below, StatementSyntax above)
    {
        var composer = new StatementComposer(above);
        composer.Copy(above, above.First!.Span);
        foreach (var part in LineParts.Of(above, isRecipe: false))
        {
            composer.Line(above, part);
            if (part.Key == LineParts.Widened)
            {
                Widen(composer, above, below);
            }
        }

        foreach (var part in LineParts.Of(below, isRecipe: false).Where(part => !Own.Contains(part.Clause.Spec) && !above.Has(part.Clause.Spec)))
        {
            composer.Line(below, part);
        }

        return composer.ToStatement(above.IsWhole && below.IsWhole);
    }

    private static void Widen(StatementComposer composer, StatementSyntax above, StatementSyntax below)
    {
        var had = above.All(HouseGrammar.UnsuitableFor).SelectMany(line => line.Content).Select(name => name.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var name in below.All(HouseGrammar.UnsuitableFor).SelectMany(line => line.Content).Where(name => had.Add(name.Key)))
        {
            composer.Write(", ", below, name.Span with { Length = 0 });
            composer.Copy(below, name.Span);
        }
    }
}
