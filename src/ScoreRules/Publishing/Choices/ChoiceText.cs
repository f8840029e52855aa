using System.Collections.Immutable;
using Humanizer;
using ScoreRules.Choosing;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing.Answers;

namespace ScoreRules.Publishing.Choices;

/// <summary>Choices for a terminal: cautions first, then the movements and what each is there for, then how good the choice is.</summary>
/// <param name="judgement">The house, judged for nobody in particular.</param>
public sealed class ChoiceText(Judgement judgement)
{
    private const int MostNamed = 8;

    /// <summary>The choices given, each with the judgement it was made from.</summary>
    public string Print(IReadOnlyList<(Judgement For, Choice Choice)> choices)
    {
        var block = new TextBlock();
        if (judgement.Ruleset.House is { } house)
        {
            block.Wrapped($"{house.Name}, version {house.Version}");
        }

        block.Wrapped(Sentences.Education);
        foreach (var (seen, choice) in choices)
        {
            block.Blank();
            Print(block, seen, choice);
        }

        block.Blank();
        block.Labelled("How", "Each part of what is wanted counts with the points of the best movement chosen for it: half of a target its muscles by share, a quarter their lengths, a quarter its movement patterns. The choice is the best there is, found by exact search in hundredths of a point and ten-thousandths of weight; equal ones go by rank, then by name.");
        block.Wrapped(Sentences.Education);
        return block.ToString();
    }

    private static void Print(TextBlock block, Judgement seen, Choice choice)
    {
        block.Line(Sentences.Capital(ChoiceWords.Asked(choice.Request)));
        if (choice.Request.Statement is { } asked)
        {
            block.Labelled("Asked", asked.Info.Because is { } because ? $"{asked.Info.Location}: \"{Sentences.Sentence(because)}\"" : asked.Info.Location.ToString());
        }

        PrintFirst(block, seen, choice);
        block.Blank();
        if (choice.Obstacle is { } obstacle)
        {
            PrintObstacle(block, obstacle);
        }
        else
        {
            PrintChosen(block, choice);
            PrintFigures(block, choice);
        }

        PrintWeek(block, choice);
        PrintNotOffered(block, choice);
    }

    private static void PrintFirst(TextBlock block, Judgement seen, Choice choice)
    {
        if (seen.Profile is { } profile)
        {
            block.Labelled("Profile", $"{profile.Name}. Scores are those of the house; what does not fit is not offered.");
            foreach (var (joint, _) in profile.Sore)
            {
                block.Labelled("First", $"This page cannot judge a sore {joint}; ask a licensed professional. It only sets aside movements rated to load it more.");
            }
        }

        foreach (var (shown, movements) in AnswerCautions.Of(choice.Rows, seen.Explainer!))
        {
            var undecided = shown.IsUndecided ? " (Could not be told from the facts; shown to be careful.)" : "";
            var label = shown.Caution.Place == CautionPlace.AboveTheRanking ? "First" : shown.Caution.Severity == CautionSeverity.Stop ? "Stop" : "Caution";
            var about = movements.Length > 1 && movements.Length == choice.Chosen.Length ? "all of them" : FactText.Join(movements);
            block.Labelled(label, $"{(label == "First" ? "" : $"{about}: ")}{shown.Caution.Text}{undecided}");
        }
    }

    private static void PrintObstacle(TextBlock block, Obstacle obstacle)
    {
        block.Wrapped("No choice keeps all that is asked for.");
        foreach (var found in obstacle.Alone)
        {
            block.Labelled("In the way", ChoiceWords.InTheWay(found));
        }

        if (obstacle.Alone.Length > 1)
        {
            block.Labelled("", "Giving up any one of these is enough.");
        }
        else if (obstacle.Alone.IsEmpty)
        {
            block.Labelled("In the way", obstacle.Together.IsEmpty ? "nothing is left that could be chosen" : $"these do not go together: {string.Join("; ", obstacle.Together.Select(ChoiceWords.Limit))}");
        }
    }

    private static void PrintChosen(TextBlock block, Choice choice)
    {
        foreach (var chosen in choice.Chosen)
        {
            var ranks = chosen.Candidate.Placements.Select(placement => $"{NumberText.Points(placement.Score)} points for {placement.Row.Target.Name}, rank {NumberText.Count(placement.Rank)}");
            block.Line(Sentences.Capital(chosen.Candidate.Movement.Name));
            block.Labelled("", string.Join("; ", ranks), 4);
            block.Labelled("    Best for", Listed([.. chosen.Serves.Select(ChoiceWords.Part).Distinct(StringComparer.Ordinal)]), 18);
            if (!chosen.NeededFor.IsEmpty)
            {
                block.Labelled("    Needed for", string.Join("; ", chosen.NeededFor.Select(ChoiceWords.Limit)), 18);
            }

            block.Labelled("    Adds", $"{NumberText.Points(chosen.Adds)} points to the choice", 18);
            block.Labelled("    Instead", chosen.InItsPlace.IsEmpty ? "no single movement can stand in for it" : string.Join("; ", chosen.InItsPlace.Select(other => $"{other.Candidates[0].Movement.Name} ({NumberText.Signed(other.Points - choice.Points)})")), 18);
        }
    }

    private static void PrintFigures(TextBlock block, Choice choice)
    {
        block.Blank();
        block.Labelled("Together", $"{NumberText.Points(choice.Points)} points over all that is wanted");
        if (choice.Request.Count is { } count && choice.Chosen.Length < count)
        {
            block.Labelled("Fewer", $"{NumberText.Count(choice.Chosen.Length)} {(choice.Chosen.Length == 1 ? "is" : "are")} enough: one more that keeps the limits would add nothing.");
        }

        foreach (var fewer in choice.WithFewer)
        {
            block.Labelled($"With {NumberText.Count(fewer.Candidates.Length)}", $"{NumberText.Points(fewer.Points)}: {Names(fewer)}");
        }

        var byHand = choice.OneByOne!;
        var names = choice.Chosen.Select(chosen => chosen.Candidate.Movement.Index).ToHashSet();
        var missing = byHand.Broken.IsEmpty ? "" : $"; it misses {string.Join("; ", byHand.Broken.Select(ChoiceWords.Limit))}";
        block.Labelled("One by one", names.SetEquals(byHand.Candidates.Select(candidate => candidate.Movement.Index))
            ? "taking what adds most each time finds the same"
            : $"taking what adds most each time reaches {NumberText.Points(byHand.Points)} ({NumberText.Signed(byHand.Points - choice.Points)}): {Names(byHand)}{missing}");
        if (!choice.LeftOut.IsEmpty)
        {
            block.Labelled("Not trained", Listed([.. choice.LeftOut.Select(ChoiceWords.Part).Distinct(StringComparer.Ordinal)]));
        }
    }

    private static void PrintWeek(TextBlock block, Choice choice)
    {
        foreach (var (group, movements) in choice.MajorGroups)
        {
            block.Labelled(Sentences.Capital(group.Name), movements.IsEmpty ? "nothing that can be chosen trains it as a prime mover; add a movement for it" : string.Join(", ", movements.Select(movement => movement.Name)));
        }

        if (choice.Request.IsWeek)
        {
            block.Labelled("Days", $"{NumberText.Count(MajorGroup.DaysAWeek)} or more days a week for every major muscle group (World Health Organization, guidelines on physical activity and sedentary behaviour, 2020)");
        }
    }

    private static void PrintNotOffered(TextBlock block, Choice choice)
    {
        if (!choice.ServedByNobody.IsEmpty)
        {
            block.Labelled("None for", Listed([.. choice.ServedByNobody.Select(ChoiceWords.Part).Distinct(StringComparer.Ordinal)]));
        }

        foreach (var group in choice.Personal.SelectMany(personal => personal.SetAside).GroupBy(PersonalText.Why, row => row.Row.Movement.Name, StringComparer.Ordinal))
        {
            block.Labelled("Not offered", $"{string.Join(", ", group.Distinct(StringComparer.Ordinal))}: {group.Key}");
        }

        foreach (var row in choice.Personal.SelectMany(personal => personal.CouldNotTell).DistinctBy(row => row.Movement.Index).Where(row => choice.Rows.Any(chosen => chosen.Movement.Index == row.Movement.Index)))
        {
            block.Labelled("Could not tell", $"{row.Movement.Name}: whether it suits the profile is not recorded");
        }

        foreach (var group in choice.NotTold.GroupBy(pair => pair.Attribute))
        {
            block.Labelled("Not offered", $"{string.Join(", ", group.Select(pair => pair.Movement.Name))}: {ChoiceWords.NotTold(group.Key)}");
        }
    }

    private static string Names(CandidateChoice choice) => string.Join(", ", choice.Candidates.Select(candidate => candidate.Movement.Name));

    private static string Listed(ImmutableArray<string> names) => names.Length switch
    {
        0 => "nothing that the others do not train as well",
        <= MostNamed => string.Join(", ", names),
        _ => $"{string.Join(", ", names.Take(MostNamed))} and {"other part".ToQuantity(names.Length - MostNamed)}",
    };
}
