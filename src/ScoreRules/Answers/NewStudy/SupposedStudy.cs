using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.NewStudy;

/// <summary>Judges a house with one more study of two movements.</summary>
internal sealed class SupposedStudy(AskedHouse asked, TargetRanking ranking)
{
    private readonly TargetDefinition target = ranking.Target;

    /// <summary>The ranking when a study measures the first so many points better than the second.</summary>
    public TargetRanking? With(double difference)
    {
        var ruleset = asked.Ruleset with { Expectations = [], Studies = asked.Ruleset.Studies.Add(Study(difference)) };
        return Judge.Again(asked.Judgement, ruleset, asked.Judgement.Catalogue).Rankings.FirstOrDefault(one => one.Target.Index == target.Index);
    }

    // Weighed, of what the house judges, and about this target alone.
    private StudyDefinition Study(double difference)
    {
        var (place, names) = (asked.Question.Info.Location, asked.Question.Movements);
        var finding = new StudyFinding(asked.Movement(0).Name, StudyVerdict.MeasuredBetter, asked.Movement(1).Name, place) { Amount = UncertainNumber.GiveOrTake(difference, NewStudyAnswer.Doubt), Unit = "points" };
        var info = new StatementInfo("study", $"new study of {names[0]} against {names[1]}", place) { OnlyFor = [new ScopeEntry(target, null, null, place)] };
        return new StudyDefinition(info, StudyLevel.Movements, [finding], asked.Ruleset.House?.Judges ?? "", StudyStrength.Weigh);
    }
}
