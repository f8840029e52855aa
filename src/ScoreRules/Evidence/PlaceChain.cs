using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Scoring;

namespace ScoreRules.Evidence;

/// <summary>
/// Places movements by another where an author judges so: a point below, a point above, or beside it, both at the mean. It takes the place of
/// principle, before studies. Whoever was not tested follows the one it is placed by after them.
/// </summary>
internal sealed class PlaceChain
{
    private const double JustBy = 1;

    private readonly ImmutableArray<(PlaceDefinition Place, int Moved, int By)> steps;

    private PlaceChain(ImmutableArray<(PlaceDefinition Place, int Moved, int By)> steps) => this.steps = steps;

    /// <summary>The judgements of a target, each after the one that it rests on.</summary>
    public static PlaceChain Of(BoundRuleset ruleset, ImmutableArray<PlacementRow> rows)
    {
        var open = ruleset.Places.Where(place => place.Other is not null).Select(place => (Place: place, Moved: Find(place.Movement, rows), By: Find(place.Other!, rows)))
            .Where(step => step.Moved >= 0 && step.By >= 0 && ScopeResolution.Reaches(step.Place.Info, rows[step.Moved]))
            .OrderBy(step => step.Moved).ToList();
        var ordered = ImmutableArray.CreateBuilder<(PlaceDefinition, int, int)>(open.Count);
        while (open.FindIndex(step => open.TrueForAll(other => other.Moved != step.By || other.Moved == step.Moved)) is >= 0 and var next)
        {
            ordered.Add(open[next]);
            open.RemoveAt(next);
        }

        // What is left goes round in a circle and is reported elsewhere.
        return new PlaceChain(ordered.ToImmutable());
    }

    /// <summary>The judgement about a movement, or null.</summary>
    public PlaceDefinition? Of(int place) => steps.FirstOrDefault(step => step.Moved == place || (step.Place.Kind == PlaceKind.Beside && step.By == place)).Place;

    /// <summary>Sets scores before studies.</summary>
    /// <param name="scores">Scores on principle.</param>
    /// <param name="isInForce">Whether a judgement is in force.</param>
    public void Set(double[] scores, Func<PlaceDefinition, bool> isInForce)
    {
        foreach (var (place, moved, by) in steps)
        {
            if (isInForce(place))
            {
                Set(scores, place.Kind, moved, by, both: true);
            }
        }
    }

    /// <summary>Lets movements that were not tested follow the one they are placed by.</summary>
    /// <param name="scores">Scores after studies.</param>
    /// <param name="isTested">Whether a study speaks of a movement.</param>
    /// <param name="isInForce">Whether a judgement is in force.</param>
    public void Follow(double[] scores, Func<int, bool> isTested, Func<PlaceDefinition, bool> isInForce)
    {
        foreach (var (place, moved, by) in steps)
        {
            if (!isInForce(place))
            {
                continue;
            }

            if (!isTested(moved))
            {
                Set(scores, place.Kind, moved, by, both: !isTested(by));
            }
            else if (place.Kind == PlaceKind.Beside && !isTested(by))
            {
                scores[by] = scores[moved];
            }
        }
    }

    private static void Set(double[] scores, PlaceKind kind, int moved, int by, bool both)
    {
        if (kind == PlaceKind.Beside && both)
        {
            scores[moved] = scores[by] = (scores[moved] + scores[by]) / 2;
        }
        else
        {
            scores[moved] = scores[by] + (kind switch { PlaceKind.JustAbove => JustBy, PlaceKind.JustBelow => -JustBy, _ => 0 });
        }
    }

    private static int Find(string movement, ImmutableArray<PlacementRow> rows)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            if (NameText.Same(rows[i].Movement.Name, movement))
            {
                return i;
            }
        }

        return -1;
    }
}
