using ScoreRules.Answers;
using ScoreRules.Houses;
using ScoreRules.Language.Diagnostics;
using Shouldly;

namespace ScoreRules.Tests.Answers;

/// <summary>
/// A small invented house whose figures can be added up by hand: "far" gives 15 points a step of reach, "firm" 10 a step of hold.
/// plain 50, long 70 (held at Good), steady 55, both 85 (with an award of 10), low 0.
/// </summary>
internal static class Quayside
{
    private const string Rules = """
        ruleset Quayside
          version 1
          allows its authors 3 personal judgements

        attribute reach
          rated 0 to 4
          counts for likeness

        attribute hold
          rated 0 to 4

        attribute handle
          one of straight, free
          counts for likeness

        attribute equipment
          some of bar, bench, cable

        attribute elbow stress
          rated 0 to 3

        attribute audience
          some of older adult, sore joint
          about the person

        muscle biceps

        muscle triceps

        target arms
          made of biceps 100 parts
          benchmark plain

        target backs
          made of triceps 100 parts
          benchmark pusher

        tiers
          Keep is from 20 points above the benchmark
          Good is from 5 points above the benchmark
          Level is the rest

        criterion far
          counts 60 parts
          reads reach
          worth 0% at 0, 100% at 4
          we think so

        criterion firm
          counts 40 parts
          reads hold
          worth 0% at 0, 100% at 4
          we are sure

        call ready
          when reach is at least 3
          and hold is at least 2

        give 10 points
          named both at once
          when ready
          because it does the work of two
          we may be wrong

        never above Good
          named slippery
          when handle is free and hold is at most 1
          because it slips

        caution Ask somebody who may say so first.
          when audience has sore joint
          severity stop
          shown above the ranking

        caution Keep the feet flat.
          when reach is at least 3
          severity low
          shown on the card

        profile home
          kit bar

        """;

    /// <summary>The movements of "arms" with their facts.</summary>
    public static readonly QuaysideMovement[] Movements =
    [
        new("plain", 2, 2, "straight", "bar", 1), new("long", 4, 1, "free", "cable", 3), new("steady", 1, 4, "straight", "bar, bench", 0),
        new("both", 3, 3, "straight", "bench, cable", 2), new("low", 0, 0, "straight", "nothing", 0),
    ];

    /// <summary>The text of the house with these movements.</summary>
    public static string Text(IEnumerable<QuaysideMovement> movements) =>
        Rules + string.Concat(movements.Select(movement => movement.Text("arms"))) + new QuaysideMovement("pusher", 2, 2, "straight", "nothing", 0).Text("backs");

    /// <summary>Judges the house with more text.</summary>
    public static Judgement House(string more = "") => Sound(Support.Judged.Text(Text(Movements) + more));

    /// <summary>The answer to a question, and the house it was put to.</summary>
    public static (T Answer, Judgement Judgement) Ask<T>(string question, string more = "", string? profile = null)
        where T : Answer => AskIn<T>(Text(Movements) + more, question, profile);

    /// <summary>The answer to a question put to a house of one's own.</summary>
    public static (T Answer, Judgement Judgement) AskIn<T>(string house, string question, string? profile = null)
        where T : Answer
    {
        var sources = new HouseSources([new HouseFile("file0.rules", house, "", IsSpreadsheet: false)], []).WithQuestion(question);
        var judgement = Sound(Judge.Run(sources, profile));
        var asked = judgement.Ruleset.Questions.Single(one => HouseSources.IsQuestion(one.Info.Location.Path));
        return ((T)Answerer.Answer(judgement, asked, judgement.Rankings), judgement);
    }

    private static Judgement Sound(Judgement judgement)
    {
        judgement.Findings.Where(finding => finding.Severity == Severity.Error).Select(DiagnosticText.Full).ShouldBeEmpty();
        return judgement;
    }
}
