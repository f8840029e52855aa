using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Guarding;

/// <summary>Checks what the author expects of the ranking.</summary>
public sealed class ExpectationCheck(BoundRuleset ruleset, MovementCatalogue catalogue, InferenceResult inferred, ImmutableArray<TargetRanking> rankings)
{
    /// <summary>All expectations in the order of the house.</summary>
    public ImmutableArray<ExpectationResult> Run() => [.. ruleset.Expectations.Select(Run)];

    /// <summary>Expectations that fail, as findings.</summary>
    public static IEnumerable<Diagnostic> Findings(IEnumerable<ExpectationResult> results) =>
        results.Where(result => !result.Holds).Select(result => new Diagnostic("SR8001", Severity.Warning, "This expectation fails", new Label(result.Expectation.Info.Location, ""))
        {
            Section = result.Expectation.Info.Section,
            Notes = result.Expectation.Info.Because is { } because ? [result.Found, $"expected because: {because}"] : [result.Found],
            Suggestions =
            [
                new Suggestion("look at both movements with \"scorerules explain\": either a rule is wrong, or the expectation is"),
                .. result.Expectation.Info.Location.Source.IsOfBase ? [new Suggestion($"it belongs to the house that this one builds on: if it cannot hold here, write \"drop {result.Expectation.Info.Location.Text.Replace("expect ", "expectation ", StringComparison.Ordinal)}\" with a line \"because ...\"")] : Array.Empty<Suggestion>(),
            ],
        });

    private ExpectationResult Run(ExpectationDefinition expectation)
    {
        var relevant = rankings.Where(ranking => expectation.Targets.IsEmpty || expectation.Targets.Any(target => target.Name == ranking.Target.Name)).ToList();
        var all = Claims(expectation, relevant).ToList();
        if (all.Count == 0)
        {
            return new ExpectationResult(expectation, false, $"\"{expectation.Movement}\" is not ranked in any target that this is about");
        }

        var decisive = all.Find(claim => !claim.Found.Holds);
        decisive = decisive.Found.Sentence is null ? all[0] : decisive;
        return new ExpectationResult(expectation, decisive.Found.Holds, decisive.Found.Sentence!) { Ranking = decisive.Ranking };
    }

    private IEnumerable<((bool Holds, string? Sentence) Found, TargetRanking? Ranking)> Claims(ExpectationDefinition expectation, List<TargetRanking> relevant) => expectation.Kind switch
    {
        ClaimKind.HasAtLeast or ClaimKind.HasAtMost => relevant.Select(ranking => (Share(expectation, ranking), (TargetRanking?)ranking)),
        ClaimKind.Called or ClaimKind.OtherThan => Called(expectation).Select(found => (found, (TargetRanking?)null)),
        ClaimKind.LeftOut => AboutMovement(expectation, relevant, LeftOut),
        ClaimKind.Above or ClaimKind.AtLeastAbove or ClaimKind.Within => Compared(expectation, relevant),
        _ => AboutMovement(expectation, relevant, Tier),
    };

    private IEnumerable<((bool Holds, string? Sentence) Found, TargetRanking? Ranking)> AboutMovement(ExpectationDefinition expectation, List<TargetRanking> relevant, Func<ExpectationDefinition, TargetRanking, Movement, (bool, string?)> check)
    {
        var movement = catalogue.Find(expectation.Movement!)!;
        return relevant.Where(ranking => Holds(ranking, movement)).Select(ranking => (check(expectation, ranking, movement), (TargetRanking?)ranking));
    }

    private IEnumerable<((bool Holds, string? Sentence) Found, TargetRanking? Ranking)> Compared(ExpectationDefinition expectation, List<TargetRanking> relevant)
    {
        var (movement, other) = (catalogue.Find(expectation.Movement!)!, catalogue.Find(expectation.Other!)!);
        return relevant.Where(ranking => Holds(ranking, movement) && Holds(ranking, other)).Select(ranking => (Compare(expectation, ranking, movement, other), (TargetRanking?)ranking));
    }

    private static (bool Holds, string? Sentence) Compare(ExpectationDefinition expectation, TargetRanking ranking, Movement movement, Movement other)
    {
        if (ranking.Of(movement) is not { } first || ranking.Of(other) is not { } second)
        {
            var absent = ranking.Of(movement) is null ? movement.Name : other.Name;
            return (false, $"\"{absent}\" is left out of {ranking.Target.Name}");
        }

        var lead = first.Score - second.Score;
        var holds = expectation.Kind switch
        {
            ClaimKind.Above => ranking.Placements.IndexOf(first) < ranking.Placements.IndexOf(second) && first.Rank != second.Rank,
            ClaimKind.AtLeastAbove => Rounding.Compared(lead) >= Rounding.Compared(expectation.Amount),
            _ => Rounding.Compared(Math.Abs(lead)) <= Rounding.Compared(expectation.Amount),
        };
        return (holds, $"in {ranking.Target.Name}, \"{movement.Name}\" has {Points(first.Score)} points ({first.Tier.Name}) and \"{other.Name}\" {Points(second.Score)} ({second.Tier.Name})");
    }

    private static (bool Holds, string? Sentence) Tier(ExpectationDefinition expectation, TargetRanking ranking, Movement movement)
    {
        if (ranking.Of(movement) is not { } placement)
        {
            return (false, $"\"{movement.Name}\" is left out of {ranking.Target.Name}");
        }

        var wanted = expectation.Tiers[0].Index;
        var holds = expectation.Kind switch
        {
            ClaimKind.InTier => placement.Tier.Index == wanted,
            ClaimKind.NoHigher => placement.Tier.Index >= wanted,
            _ => placement.Tier.Index <= wanted,
        };
        return (holds, $"in {ranking.Target.Name}, \"{movement.Name}\" has {Points(placement.Score)} points and stands in {placement.Tier.Name}");
    }

    private static (bool Holds, string? Sentence) LeftOut(ExpectationDefinition expectation, TargetRanking ranking, Movement movement)
    {
        var row = ranking.LeftOut.FirstOrDefault(row => row.Row.Movement.Index == movement.Index);
        var by = expectation.Reference;
        var holds = row is not null && (by is null || row.Rules.Any(rule => rule.Info.Name is not null && NameText.Same(rule.Info.Name, by)));
        return (holds, row is null ? $"\"{movement.Name}\" is ranked in {ranking.Target.Name}" : $"\"{movement.Name}\" is left out by {string.Join(", ", row.Rules.Select(rule => rule.Info.Title))}");
    }

    private IEnumerable<(bool Holds, string? Sentence)> Called(ExpectationDefinition expectation)
    {
        var movement = catalogue.Find(expectation.Movement!)!;
        var concept = inferred.Concept(expectation.Reference!);
        foreach (var row in inferred.Facts.Rows.Where(row => row.Movement.Index == movement.Index))
        {
            var verdict = concept.VerdictOf(row.Index);
            var wanted = expectation.Kind == ClaimKind.Called ? Verdict.Held : Verdict.DidNotHold;
            var word = verdict switch { Verdict.Held => "is", Verdict.DidNotHold => "is other than", _ => "cannot be told to be" };
            yield return (verdict == wanted, $"\"{movement.Name}\" {word} {expectation.Reference}");
        }
    }

    private static (bool Holds, string? Sentence) Share(ExpectationDefinition expectation, TargetRanking ranking)
    {
        var inside = ranking.Placements.Count(placement => expectation.Tiers.Any(tier => tier.Index == placement.Tier.Index));
        var value = expectation.IsShare ? (double)inside / Math.Max(1, ranking.Placements.Length) : inside;
        var holds = expectation.Kind == ClaimKind.HasAtLeast
            ? Rounding.Compared(value) >= Rounding.Compared(expectation.Amount)
            : Rounding.Compared(value) <= Rounding.Compared(expectation.Amount);
        return (holds, $"{ranking.Target.Name} has {inside.ToString(CultureInfo.InvariantCulture)} of {ranking.Placements.Length.ToString(CultureInfo.InvariantCulture)} in {string.Join(", ", expectation.Tiers.Select(tier => tier.Name))}");
    }

    private static bool Holds(TargetRanking ranking, Movement movement) =>
        ranking.Of(movement) is not null || ranking.LeftOut.Any(row => row.Row.Movement.Index == movement.Index);

    private static string Points(double points) => Rounding.Printed(points, 1).ToString("0.0", CultureInfo.InvariantCulture);
}
