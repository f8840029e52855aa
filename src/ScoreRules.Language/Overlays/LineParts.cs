using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>
/// Takes a statement apart into what a change replaces: by the word a line starts with; facts, tiers and comparisons by what
/// they are about; the lines of a condition together, and the steps of a recipe together, because their order matters.
/// </summary>
internal static class LineParts
{
    /// <summary>Lines with this key are added to what stands there.</summary>
    public const string Added = "+";

    /// <summary>Lists with this key keep what stands there, and take in more.</summary>
    public const string Widened = "++";

    /// <summary>Lines with this key change the first line.</summary>
    public const string Head = "head";

    private static readonly ImmutableArray<ClauseSpec> Facts = [MovementGrammar.Facts, MovementGrammar.ButFacts, MovementGrammar.GuessedFacts, MovementGrammar.ButGuessedFacts];
    private static readonly ImmutableArray<ClauseSpec> Uses = [EvidenceGrammar.ShowIt, EvidenceGrammar.WeighIt, EvidenceGrammar.LetItDecide];

    /// <summary>The parts of a statement, in order.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="isRecipe">Whether its steps belong together.</param>
    public static ImmutableArray<LinePart> Of(StatementSyntax statement, bool isRecipe)
    {
        var parts = ImmutableArray.CreateBuilder<LinePart>();
        foreach (var line in statement.Lines)
        {
            if (Facts.Contains(line.Spec))
            {
                parts.AddRange(FactsOf(((ClauseSyntax<FactSyntax[]>)line).Content, line, statement.Source));
            }
            else
            {
                var goesOn = line.Spec.Continues && parts.Count > 0;
                parts.Add(new LinePart(goesOn ? parts[^1].Key : KeyOf(line, isRecipe), line, line.Span));
            }
        }

        return parts.ToImmutable();
    }

    private static string KeyOf(ClauseSyntax line, bool isRecipe) => line switch
    {
        ClauseSyntax<TierSyntax> tier => "tier " + tier.Content.Name.Key,
        ClauseSyntax<ChangedTierSyntax> tier => "tier " + tier.Content.Name.Key,
        ClauseSyntax<ImportanceSyntax> pair => string.Join(" against ", new[] { pair.Content.First.Key, pair.Content.Second.Key }.Order(StringComparer.Ordinal)),
        ClauseSyntax<StepSyntax> when isRecipe => "steps",
        _ => KeyOf(line.Spec),
    };

    private static string KeyOf(ClauseSpec spec) =>
        spec == Uniform.ExceptFor || spec == Uniform.Accept || spec == QuestionGrammar.Sore ? Added
        : spec == HouseGrammar.UnsuitableFor || spec == QuestionGrammar.Audience ? Widened
        : spec == OverlayGrammar.Points || spec == OverlayGrammar.NeverAbove || spec == OverlayGrammar.NeverBelow ? Head
        : spec == Reach.Always ? Reach.When.Starter
        : VocabularyGrammar.KindOfValue.Lines.Contains(spec) ? "type"
        : Uniform.Belief.Lines.Contains(spec) ? "belief"
        : Uses.Contains(spec) ? "use"
        : spec.Starter.StartsWith("but ", StringComparison.Ordinal) ? spec.Starter[4..]
        : spec.Starter;

    private static IEnumerable<LinePart> FactsOf(FactSyntax[] facts, ClauseSyntax line, SourceText source)
    {
        for (var i = 0; i < facts.Length; i++)
        {
            var start = facts[i].Attribute.Span.Start;
            var end = i + 1 < facts.Length ? facts[i + 1].Attribute.Span.Start : line.Span.End;
            var text = source.Slice(SourceSpan.FromBounds(start, end)).TrimEnd().TrimEnd(',').TrimEnd();
            yield return new LinePart("fact " + facts[i].Attribute.Key, line, new SourceSpan(start, text.Length), line.Spec.Starter.Length == 0 ? "" : line.Spec.Starter + " ");
        }
    }
}
