using System.Collections.Frozen;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>One sound line for each kind of line that is more than fixed words or free text. Used only in messages; the names in them are invented.</summary>
internal static class LineExamples
{
    private static readonly string[] Lines =
    [
        "builds on Riverside, version 3", "version 3", "checked 4 May 2031 by a second coach", "judges muscle growth", "unsuitable for youth, older adult",
        "explains with 3 reasons in favour, 1 against", "allows its authors 5 personal judgements", "person 80 kg, 180 cm, male",
        "rated 0 to 4", "in kg", "one of pronated, supinated, neutral", "some of barbell, dumbbells", "anchor 0 nothing carries the body", "also known as curl",
        "crosses elbow, shoulder", "made of soleus 60 parts, gastrocnemius 40 parts", "benchmark dumbbell curl", "part of deltoids",
        "say clearly means at least 10 points", "order stretch, stability", "counts 10 parts", "reads stretch", "worth 0% at 0, 100% at 4", "unknown is worth 40%",
        "when stretch is at least 3", "and stretch is at least 3", "or when grip is one of neutral, supinated", "unless equipment has barbell",
        "start with set-up", "plus 60 s", "minus 10 s", "times 2", "divided by 2", "at least 15 s", "at most 180 s",
        "give 4 points", "take 4 points", "each 2 points", "never above Level", "never below Level", "leave out barbell curl, cable curl", "severity high", "shown beside the name",
        "principles may be off by 5 points", "one standard deviation is worth 18 points", "a lone study adds 3 points of doubt", "ignores muscle activity, soreness",
        "spreads to movements at least 60% alike", "compares movements", "found cable curl is clearly better than barbell curl",
        "measured cable curl is 9 points give or take 3 points better than barbell curl", "outcome muscle growth", "people 20 trained adults", "lasted 12 weeks",
        "design within person", "trust 50% because untrained people", "withdrawn 3 March 2031 because the journal took it back",
        "like cable curl", "trains elbow flexors", "but grip is neutral", "at a guess stretch is 3 give or take 1", "but at a guess stretch is 3",
        "keeps shoulder flexion 0°, trunk pitch 0°", "but keeps shoulder flexion 90°", "moves elbow flexion 10° to 135°", "but moves elbow flexion 20° to 130°",
        "pulley 0.6 m forward, 1 m down", "but pulley 0.6 m forward, 0.5 m up", "foot line 0.1 m forward", "external load 20 kg", "band 20 N at 0.2 m, 45 N at 0.5 m",
        "but foot line 0.2 m forward", "but external load 25 kg", "but band 30 N at 0.2 m, 60 N at 0.5 m", "but cam radius 6 cm at 0°, 8 cm at 90°",
        "cam radius 5 cm at 0°, 9 cm at 90°", "just below cable curl", "just above cable curl", "beside cable curl",
        "kit dumbbells, flat bench", "sore elbow", "audience older adult", "avoid when elbow stress is at least 3", "prefer when elbow stress is at most 1",
        "choose 3 for hamstrings, calves", "cover loaded long, loaded short", "include 1 when grip is neutral", "total set-up is at most 10 min", "no two more alike than 80%",
        "no two differ only by grip", "using profile quiet garage", "expect cable curl is above barbell curl", "ask why cable curl is above barbell curl", "to Level",
        "ask what is lost without cable column", "ask where cable curl is shaky",
        "ask why not loaded long for barbell curl", "ask how firmly cable curl is above barbell curl", "ask what lifts barbell curl to Level", "ask what to buy for chest",
        "ask what a sore elbow costs", "ask what is forgotten for chest", "ask what is misplaced for chest", "ask what is shaky for chest", "ask what rests on stretch",
        "ask what a study of cable curl against barbell curl would change", "points 2 points", "only for calves", "except for calves, chest because they differ",
        "from 4 May 2031", "until 4 May 2031", "named no load when long", "overrides no load when long", "accept SR4005 because the next catalogue has some",
    ];

    private static readonly string[] Starters =
        [.. StatementTable.All.SelectMany(head => head.Lines.Select(use => use.Spec.Starter).Append(head.Words)).Where(starter => starter.Length > 0).Distinct(StringComparer.Ordinal)];

    private static readonly FrozenDictionary<ClauseSpec, string> Named = new Dictionary<ClauseSpec, string>
    {
        [MovementGrammar.Facts] = "grip is neutral, stretch is 3",
        [VocabularyGrammar.Tier] = "Strong pick is from 4 points above the benchmark",
        [OverlayGrammar.Tier] = "Strong pick is now called Good",
        [ScoringGrammar.Importance] = "stretch is 2 times as important as stability",
    }.ToFrozenDictionary();

    // "but at a guess" begins with "but" too: the longest starter is the line's own.
    private static readonly FrozenDictionary<string, string> ByStarter =
        Lines.ToFrozenDictionary(line => Starters.Where(starter => line.StartsWith(starter + " ", StringComparison.Ordinal)).MaxBy(starter => starter.Length)!, StringComparer.Ordinal);

    /// <summary>The example of a kind of line; null for fixed words, free text and lines that are just a name.</summary>
    public static string? Of(ClauseSpec spec) => spec.Starter.Length == 0 ? Named.GetValueOrDefault(spec) : ByStarter.GetValueOrDefault(spec.Starter);
}
