using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers;

/// <summary>What was found out for a question. Each kind of question has its own record; nothing is worded here.</summary>
/// <param name="Question">The question.</param>
public abstract record Answer(QuestionDefinition Question)
{
    /// <summary>The placements that it speaks of, whose cautions must stand beside it.</summary>
    public abstract IEnumerable<PlacementRow> Rows { get; }

    /// <summary>The house judged again, where the answer is about that and its rows are of that; else null.</summary>
    public Judgement? Anew { get; init; }

    /// <summary>The judgement whose rows <see cref="Rows"/> are.</summary>
    /// <param name="judgement">The house as it was judged.</param>
    public Judgement Judged(Judgement judgement) => Anew ?? judgement;
}
