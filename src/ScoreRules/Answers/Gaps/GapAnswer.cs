using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Gaps;

/// <summary>Movements that could be and that the catalogue does not hold, list by list.</summary>
/// <param name="Question">The question.</param>
/// <param name="Lists">One for each target.</param>
public sealed record GapAnswer(QuestionDefinition Question, ImmutableArray<GapList> Lists) : Answer(Question)
{
    /// <summary>Facts that are varied, one at a time. All others are taken over from the movement it is like.</summary>
    public static ImmutableArray<string> Varied { get; } = ["laterality", "body position", "handle", "grip", "resistance type", "line of pull"];

    /// <summary>The fact by which movements are of one kind: only words that such movements have are tried.</summary>
    public const string Pattern = "movement pattern";

    /// <summary>Facts that, with those that are varied, say whether two movements are the same.</summary>
    public static ImmutableArray<string> Fixed { get; } = [Pattern, "prime mover", "joint class", "equipment"];

    /// <inheritdoc/>
    public override IEnumerable<PlacementRow> Rows => Lists.SelectMany(list => list.Best).Select(gap => gap.Like);
}
