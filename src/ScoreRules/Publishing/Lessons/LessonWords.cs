using System.Globalization;
using Humanizer;
using ScoreRules.Explanation;
using ScoreRules.Language.Binding;
using ScoreRules.Teaching;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Lessons;

/// <summary>The sentences of a lesson: a hyphen for minus, as everywhere in text.</summary>
internal static class LessonWords
{
    /// <summary>The title: "A lesson: hamstrings".</summary>
    public static string Title(Lesson lesson) => $"A lesson: {lesson.Ranking.Target.Name}";

    /// <summary>How to use it, before the first movement.</summary>
    public static string Opening(Lesson lesson) =>
        $"{"movement".ToQuantity(lesson.Steps.Length)}, the {lesson.Steps[0].Movement} first. Each of the others is told beside the movement most like it among those already told, and only by what differs between the two. " +
        "The points are those of the house. Read a movement's cautions aloud before anything else about it.";

    /// <summary>What it is told beside: "Beside the lying leg curl, 71 % alike".</summary>
    public static string Beside(LessonStep step) => step.Cousin is not { } cousin ? "The benchmark: everything else is measured from here"
        : double.IsNaN(step.Likeness) ? $"Beside the {cousin.Movement}; too little is recorded to say how alike they are"
        : $"Beside the {cousin.Movement}, {Percent(step.Likeness)} alike";

    /// <summary>A question to ask before telling; null for the first movement.</summary>
    public static string? Question(LessonStep step) => step.Cousin is null ? null : $"Is it above the {step.Cousin.Movement} or below, and what makes you say so?";

    /// <summary>The step up or down: "Up by 22.8 to 90.8 points".</summary>
    public static string Move(LessonStep step)
    {
        var score = $"{NumberText.Points(step.Score)} points";
        var printed = Rounding.Printed(step.Difference, 1);
        return step.Cousin is null ? $"It scores {score}"
            : printed == 0 ? $"Level, at {score}"
            : $"{(printed > 0 ? "Up" : "Down")} by {NumberText.Points(Math.Abs(step.Difference))} to {score}";
    }

    /// <summary>Why a part is what it is.</summary>
    public static string Why(LessonStep step, Reason part)
    {
        if (!part.Studies.IsEmpty)
        {
            return Sentences.Sentence(Studies(step, part));
        }

        var same = part.Criterion is { BenchmarkFact: { } fact } criterion && FactText.Value(criterion.Attribute, fact.Value) == FactText.Value(criterion.Attribute, criterion.Fact.Value);
        return Sentences.Sentence(same ? "the same mark, which counts for another share here" : Sentences.Reason(part, step.Cousin?.Movement));
    }

    /// <summary>The parts of the first movement: every criterion with what it gave, then awards, studies and judgements.</summary>
    public static IEnumerable<(string Name, double Points, string Why)> Marks(PlacementExplanation explained) =>
        explained.Criteria.Select(criterion => (criterion.Criterion.Name, criterion.Points, Sentences.Sentence(FactText.Told(criterion.Attribute, criterion.Fact))))
            .Concat(explained.Held<AwardDefinition>().Select(rule => (AwardDefinition)rule.Rule).Select(award => (award.Info.Name ?? award.Info.Kind, award.Points, Sentences.Sentence(award.Info.Because ?? "a rule of the house"))))
            .Concat(Moves(explained));

    private static IEnumerable<(string Name, double Points, string Why)> Moves(PlacementExplanation explained)
    {
        if (explained.Evidence is not { } evidence)
        {
            return [];
        }

        var pulls = evidence.Pulls.Where(pull => pull.Points != 0).Select(pull => ($"study {pull.Claim.Study.Name}", pull.Points, Sentences.Sentence(EvidenceText.Pull(explained, pull))));
        var held = evidence.Held.Where(pull => pull.Points != 0).Select(pull => ($"study {pull.Claim.Study.Name}", pull.Points, Sentences.Sentence(EvidenceText.Held(explained, pull))));
        return evidence is { Place: { } place } && evidence.PlacePoints != 0
            ? [.. pulls, .. held, ("personal judgement", evidence.PlacePoints, Sentences.Sentence(Sentences.PlacedBy(place)))]
            : [.. pulls, .. held];
    }

    private static string Studies(LessonStep step, Reason part)
    {
        var (cousin, strongest) = (step.Cousin!.Movement, part.Studies.MaxBy(pull => Math.Abs(pull.Points))!);
        var whose = (part.IsBenchmarks, strongest.IsTested) switch
        {
            (true, true) => $"the {cousin} was tested",
            (true, false) => $"a movement like the {cousin} was tested",
            (false, true) => "it was tested",
            _ => "a movement like it was tested",
        };
        var moved = part.BenchmarkMoved;
        var both = part.IsBenchmarks || Rounding.Printed(moved, 1) == 0 ? "" : $"; {NumberText.Signed(-moved)} of it because the {cousin} moved";
        return $"{whose}: study {strongest.Claim.Study.Name} {EvidenceText.Verb(strongest.Claim)} {strongest.Claim.First} {EvidenceText.Said(strongest.Claim)}{both}";
    }

    /// <summary>A fact that differs: "peak load: middle here, even there", "helper: adds gracilis; leaves out grip".</summary>
    public static string Change((AttributeDefinition Attribute, FactValue Own, FactValue Cousins) change)
    {
        var (attribute, own, cousins) = change;
        if (attribute.Kind != AttributeKind.SomeOf)
        {
            return $"{attribute.Name}: {FactText.Value(attribute, own)} here, {FactText.Value(attribute, cousins)} there";
        }

        var (added, lost) = (own.Codes.Except(cousins.Codes).Select(code => attribute.Values[code]).ToList(), cousins.Codes.Except(own.Codes).Select(code => attribute.Values[code]).ToList());
        string?[] told = [added.Count > 0 ? $"adds {FactText.Join(added)}" : null, lost.Count > 0 ? $"leaves out {FactText.Join(lost)}" : null];
        return $"{attribute.Name}: {string.Join("; ", told.OfType<string>())}";
    }

    /// <summary>Where it stands in the list.</summary>
    public static string Place(LessonStep step)
    {
        var ranking = step.Explained.Ranking;
        if (step.Explained.Placement is not { } placement)
        {
            return "It is only measured against, and stands in no tier.";
        }

        var place = $"{placement.Tier.Name}, {NumberText.Count(placement.Rank)}{(placement.IsTied ? "=" : "")} of {NumberText.Count(ranking.Placements.Length)}";
        var gap = ranking.Benchmark is { } benchmark && !placement.IsBenchmark ? $", {Gap(placement.Gap, benchmark.Movement.Name)}" : "";
        var limits = placement.Binding is null ? "" : $" {Sentences.Sentence(Sentences.Limits(placement))}";
        var judgement = Sentences.Judgement(placement) is { } told ? $" {Sentences.Sentence(told)}" : "";
        return $"{place}{gap}.{limits}{judgement}";
    }

    private static string Gap(double gap, string benchmark) => Rounding.Printed(gap, 1) is var printed && printed == 0
        ? $"level with the {benchmark}"
        : $"{NumberText.Points(Math.Abs(gap))} {(printed > 0 ? "above" : "below")} the {benchmark}";

    private static string Percent(double share) => $"{Rounding.Printed(100 * share, 0).ToString("0", CultureInfo.InvariantCulture)} %";
}
