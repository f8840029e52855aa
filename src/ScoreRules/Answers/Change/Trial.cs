using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Change;

/// <summary>
/// Rules by which many suppositions are tried at once: without studies and judgements by another movement, whose effect is given to the
/// movement as it is now. Nothing is told from a trial alone.
/// </summary>
internal static class Trial
{
    /// <summary>The house without studies, judgements by another movement, and expectations.</summary>
    public static BoundRuleset OnPrinciple(BoundRuleset ruleset) =>
        ruleset with { Expectations = [], Studies = [], Places = [.. ruleset.Places.Where(place => place.Shift != 0)] };

    /// <summary>Points by which studies and judgements by another movement move a row against its benchmark.</summary>
    public static double ShiftOf(Judgement judgement, PlacementRow row, PlacementRow? benchmark) => judgement.Evidence is not { } evidence ? 0
        : Rounding.Compared(evidence.Of(row).Moved - (benchmark is null ? 0 : evidence.Of(benchmark).Moved));

    /// <summary>Rules that give one movement so many points more.</summary>
    public static BoundRuleset With(BoundRuleset onPrinciple, Movement movement, double points)
    {
        if (points == 0)
        {
            return onPrinciple;
        }

        var info = new StatementInfo("give", null, movement.Location) { OnlyFor = [new ScopeEntry(null, movement.Name, null, movement.Location)] };
        return onPrinciple with { Awards = onPrinciple.Awards.Add(new AwardDefinition(info, new Everything(movement.Location), UncertainNumber.Certain(points))) };
    }
}
