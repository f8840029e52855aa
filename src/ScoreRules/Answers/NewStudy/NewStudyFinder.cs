using ScoreRules.Answers.Beliefs;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.NewStudy;

/// <summary>Finds which results of a new study would turn an order or a tier: on lines two points apart, then by bisection, each judged.</summary>
internal static class NewStudyFinder
{
    private const double Lines = 2;
    private const double Exact = 0.01;
    private static readonly bool[] Sides = [true, false];

    /// <summary>The answer.</summary>
    public static NewStudyAnswer Find(AskedHouse asked)
    {
        var canWeigh = asked.Ruleset.Evidence is { CanWeigh: true };
        var findings = canWeigh ? asked.Rankings.Select(ranking => Find(asked, ranking)).OfType<NewStudyFinding>() : [];
        return new NewStudyAnswer(asked.Question, asked.Movement(0), asked.Movement(1), canWeigh, [.. findings]);
    }

    private static NewStudyFinding? Find(AskedHouse asked, TargetRanking ranking)
    {
        if (ranking.Of(asked.Movement(0)) is not { } first || ranking.Of(asked.Movement(1)) is not { } second)
        {
            return null;
        }

        var kept = new Dictionary<double, (Placement First, Placement Second)?>();
        var study = new SupposedStudy(asked, ranking);
        var turns = Enum.GetValues<StudyEffectKind>().SelectMany(kind => Sides.Select(upward => Turn(kind, upward, first, second, At))).OfType<StudyTurn>();
        return new NewStudyFinding(first, second, [.. turns], study.With(0) is { } level ? [.. Moves(ranking, level)] : []);

        (Placement First, Placement Second)? At(double difference)
        {
            if (!kept.TryGetValue(difference, out var pair))
            {
                var judged = study.With(difference);
                kept[difference] = pair = judged?.Of(first.Row.Movement) is { } one && judged.Of(second.Row.Movement) is { } other ? (one, other) : null;
            }

            return pair;
        }
    }

    private static StudyTurn? Turn(StudyEffectKind kind, bool upward, Placement first, Placement second, Func<double, (Placement First, Placement Second)?> at)
    {
        var (now, step, start) = (Of(kind, first, second), upward ? Lines : -Lines, Rounding.Printed(first.Score - second.Score, 1));
        for (var difference = start; Math.Abs(difference - start) < NewStudyAnswer.Furthest; difference += step)
        {
            if (Turned(difference + step))
            {
                var found = Nearest(difference, difference + step, Turned);
                var told = upward ? Math.Ceiling(Rounding.Compared(found * 10)) / 10 : Math.Floor(Rounding.Compared(found * 10)) / 10;
                return at(told) is { } then && Turned(told) ? new StudyTurn(kind, told, upward, then.First, then.Second) : null;
            }
        }

        return null;

        bool Turned(double difference) => at(difference) is { } then && Of(kind, then.First, then.Second) != now;
    }

    private static double Nearest(double without, double with, Func<double, bool> isTurned)
    {
        while (Math.Abs(with - without) > Exact)
        {
            var middle = (without + with) / 2;
            (without, with) = isTurned(middle) ? (without, middle) : (middle, with);
        }

        return with;
    }

    private static int Of(StudyEffectKind kind, Placement first, Placement second) => kind switch
    {
        StudyEffectKind.Order => Math.Sign(first.Rank - second.Rank),
        StudyEffectKind.FirstTier => first.Tier.Index,
        _ => second.Tier.Index,
    };

    private static IEnumerable<TierMove> Moves(TargetRanking before, TargetRanking after) =>
        before.Placements.Select(placement => new TierMove(placement.Row, placement.Tier, after.Of(placement.Row.Movement)?.Tier)).Where(move => move.After is not null && move.After.Index != move.Before!.Index);
}
