using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Profiles;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>What a profile does to a ranking, in words: what is set aside and why, and what that costs.</summary>
internal sealed class PersonalText
{
    private readonly ProfileDefinition profile;
    private readonly ImmutableArray<PersonalRanking> personal;

    /// <summary>Looks at rankings through a profile.</summary>
    public PersonalText(Judgement judgement, ProfileDefinition profile, IEnumerable<TargetRanking> whole)
    {
        this.profile = profile;
        var view = new ProfileView(judgement.Ruleset, judgement.Inferred!, profile);
        personal = [.. whole.Select(view.Of)];
    }

    /// <summary>What is left of each ranking.</summary>
    public IReadOnlyList<TargetRanking> Rankings => [.. personal.Select(one => one.Ranking)];

    /// <summary>Says beside a placement that a movement which is left still loads a sore joint a little.</summary>
    public static void PrintFlags(TextBlock block, ProfileDefinition? profile, Movement movement)
    {
        foreach (var (joint, stress) in profile?.Sore ?? [])
        {
            var rated = movement.Facts[stress.Index].Value;
            if (!rated.IsKnown || rated.Number > stress.Scale.Low)
            {
                block.Wrapped(rated.IsKnown ? $"{joint}: lower in this flag ({FactText.Value(stress, rated)}), not free of it" : $"{joint}: could not tell, not recorded", 7);
            }
        }
    }

    /// <summary>Whose view this is, and what it can and cannot do.</summary>
    public void PrintHead(TextBlock block)
    {
        block.Labelled("Profile", $"{profile.Name}. Scores and tiers are those of the house; what does not fit is set aside below each list.");
        foreach (var (joint, _) in profile.Sore)
        {
            block.Labelled("", $"This page cannot judge a sore {joint}. It only sets aside movements rated to load it more.");
        }
    }

    /// <summary>What is set aside in one target, with reasons, and what it costs.</summary>
    public void PrintSetAside(TextBlock block, TargetDefinition target)
    {
        var own = personal.First(one => one.Whole.Target.Index == target.Index);
        if (own.SetAside.IsEmpty)
        {
            return;
        }

        block.Blank();
        PrintKind(block, own, "Avoid for now", SetAsideKind.SoreJoint, row => $"rated to load the {row.Detail} more");
        PrintKind(block, own, "Avoid for now", SetAsideKind.Avoid, row => $"the profile avoids \"{row.Detail}\"");
        PrintKind(block, own, "Kit missing", SetAsideKind.Kit, row => row.Detail);
        block.Labelled("Cost", Cost(own));
    }

    private static void PrintKind(TextBlock block, PersonalRanking own, string label, SetAsideKind kind, Func<SetAsideRow, string> why)
    {
        foreach (var group in own.SetAside.Where(row => row.Kind == kind).GroupBy(why, StringComparer.Ordinal))
        {
            block.Labelled(label, $"{string.Join(", ", group.Select(row => row.Row.Movement.Name))}: {group.Key}");
        }
    }

    /// <summary>Why a movement is set aside.</summary>
    public static string Why(SetAsideRow row) => row.Kind switch
    {
        SetAsideKind.SoreJoint => $"avoid for now, rated to load the {row.Detail} more",
        SetAsideKind.Avoid => $"avoid for now, the profile avoids \"{row.Detail}\"",
        _ => $"kit missing, {row.Detail}",
    };

    /// <summary>What a profile costs at the top of one list.</summary>
    public static string Cost(PersonalRanking own) => own.FirstChoice switch
    {
        (_, null) => "nothing is left in this list",
        ({ } of, { } left) when of.Row.Index == left.Row.Index => "nothing at the top is lost",
        ({ } of, { } left) => $"the first choice falls from {NumberText.Points(of.Score)} ({of.Row.Movement.Name}) to {NumberText.Points(left.Score)} ({left.Row.Movement.Name})",
        _ => "nothing is lost",
    };
}
