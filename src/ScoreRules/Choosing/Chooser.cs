using System.Collections.Immutable;
using ScoreRules.Catalogue;

namespace ScoreRules.Choosing;

/// <summary>Finds a few movements that go together.</summary>
public static class Chooser
{
    private const int MostStandIns = 2;

    /// <summary>The best choice, with what each movement is there for; or why there is none.</summary>
    /// <param name="judgement">A house that was ranked, for the person that the choice is for.</param>
    /// <param name="request">What is wanted.</param>
    public static Choice Choose(Judgement judgement, ChoiceRequest request)
    {
        var list = CandidateList.Of(judgement, request);
        var serving = new ChoiceParts(judgement);
        var parts = serving.Of(list.Rankings);
        var problem = Problem(judgement, request, list, parts, serving);
        var choice = new Choice(request, problem, list.Candidates, parts)
        {
            Rankings = list.Rankings,
            Personal = list.Personal,
            NotTold = list.NotTold,
            ServedByNobody = [.. parts.Where((_, part) => problem.Worth.All(worth => worth[part] == 0))],
        };
        var found = Solve(problem, request.Count, out var solved);
        choice = choice with { Problem = solved };
        return found is { } best ? Finish(choice, best, serving) : choice with { Obstacle = Obstacle.Of(solved) };
    }

    // Without a number, the fewest that keep every limit.
    private static ImmutableArray<int>? Solve(ChoiceProblem problem, int? count, out ChoiceProblem solved)
    {
        solved = count is { } most ? problem.AtMost(most) : ExactChoice.Fewest(problem) is { } fewest ? problem.AtMost(fewest) : problem;
        return ExactChoice.Best(solved);
    }

    private static ChoiceProblem Problem(Judgement judgement, ChoiceRequest request, CandidateList list, ImmutableArray<ChoicePart> parts, ChoiceParts serving)
    {
        var limits = new ChoiceLimits(judgement, list.Candidates);
        return new ChoiceProblem(
            [.. parts.Select(part => (long)Math.Round(part.Share * ChoiceProblem.WeightScale, MidpointRounding.AwayFromZero))],
            [.. list.Candidates.Select(candidate => parts.Select(part => Worth(candidate, part, serving)).ToImmutableArray())],
            [.. limits.Of(request), .. request.IsWeek ? WeekLimits(request, limits, serving) : []]);
    }

    private static long Worth(ChoiceCandidate candidate, ChoicePart part, ChoiceParts serving) =>
        candidate.Placements.Where(placement => serving.Serves(placement, part))
            .Select(placement => Math.Max(0, (long)Math.Round(Tiering.Rounding.Compared(placement.Score * ChoiceProblem.PointScale), MidpointRounding.AwayFromZero)))
            .DefaultIfEmpty(0).Max();

    // What nobody can do is said, and not asked for.
    private static IEnumerable<ChoiceLimit> WeekLimits(ChoiceRequest request, ChoiceLimits limits, ChoiceParts serving)
    {
        var targets = request.Targets.Select(target => limits.AtLeast(ChoiceLimitKind.Target, target.Name, 1, candidate => candidate.Placements.Any(placement => placement.Row.Target.Index == target.Index)));
        var groups = MajorGroup.All.Select(group => limits.AtLeast(ChoiceLimitKind.MajorGroup, group.Name, 1, candidate => Trains(candidate.Movement, group, serving)));
        return targets.Concat(groups).Where(limit => !limit.Among.IsEmpty);
    }

    private static bool Trains(Movement movement, MajorGroup group, ChoiceParts serving) => group.Muscles.Any(muscle => serving.Moves(movement, muscle));

    private static Choice Finish(Choice choice, ImmutableArray<int> best, ChoiceParts serving)
    {
        var problem = choice.Problem;
        return choice with
        {
            Chosen = [.. best.Select(candidate => Chosen(choice, best, candidate))],
            Points = problem.Points(problem.Value(best)),
            WithFewer = [.. Enumerable.Range(1, best.Length - 1).Select(count => ExactChoice.Best(problem.AtMost(count))).OfType<ImmutableArray<int>>().DistinctBy(taken => string.Join(' ', taken)).Select(taken => Told(choice, taken))],
            OneByOne = Told(choice, OneByOne.Take(problem)),
            LeftOut = [.. choice.Parts.Where((part, index) => best.All(candidate => problem.Worth[candidate][index] == 0) && !choice.ServedByNobody.Contains(part))],
            MajorGroups = choice.Request.IsWeek
                ? [.. MajorGroup.All.Select(group => (group, best.Select(candidate => choice.Candidates[candidate].Movement).Where(movement => Trains(movement, group, serving)).ToImmutableArray()))]
                : [],
        };
    }

    private static ChosenMovement Chosen(Choice choice, ImmutableArray<int> best, int candidate)
    {
        var (problem, others) = (choice.Problem, best.Remove(candidate));
        var standIns = Enumerable.Range(0, choice.Candidates.Length).Where(other => !best.Contains(other) && problem.Allows(others.Add(other)))
            .OrderByDescending(other => problem.Value(others.Add(other))).ThenBy(other => other).Take(MostStandIns);
        return new ChosenMovement(
            choice.Candidates[candidate],
            problem.Points(problem.Value(best) - problem.Value(others)),
            [.. choice.Parts.Where((_, part) => problem.Worth[candidate][part] > others.Select(other => problem.Worth[other][part]).DefaultIfEmpty(0).Max())],
            [.. problem.Limits.Where(limit => !limit.Allows(others))],
            [.. standIns.Select(other => new CandidateChoice([choice.Candidates[other]], problem.Points(problem.Value(others.Add(other))), []))]);
    }

    private static CandidateChoice Told(Choice choice, ImmutableArray<int> taken) =>
        new([.. taken.Select(candidate => choice.Candidates[candidate])], choice.Problem.Points(choice.Problem.Value(taken)), [.. choice.Problem.Limits.Where(limit => !limit.Allows(taken))]);
}
