using ScoreRules.Language.Binding;

namespace ScoreRules.Starting;

/// <summary>The words of a starter house.</summary>
internal static class StarterText
{
    /// <summary>The name of the tier that holds the benchmark.</summary>
    public const string MiddleTier = "Level with the benchmark";

    /// <summary>The main file, without its expectations.</summary>
    public static string House(string name, StarterTarget target) => $$"""
        note A house to start from: change every line. The notes say what each part is for; scorerules check says what is wrong, WORDS.md lists the words.

        note Education, not medical advice. Your gym's rules, local codes and licensed professionals come first.

        ruleset {{NameWriting.Written(name)}}
          version 1
          judges muscle growth

        section What we are after

        note Your philosophy in plain sentences. It is printed with the rules below it; it computes nothing.

        philosophy
          The muscle we name should do the work, meet its load while it is long,
          and be able to meet a little more next month.

        section What we rank

        note A target is a muscle group with a list of its own. Parts say how much each muscle counts: equal to begin with, and they need not make 100.

        note The benchmark is the movement everybody has done. All others are measured against it.

        {{target.Text}}
        section Our tiers

        note Best first. Name them as you speak; the borders are points above or below the benchmark.

        tiers
          Start here is from 6 points above the benchmark
          {{MiddleTier}} is within 6 points of the benchmark
          Some days is the rest

        section What counts

        note A criterion reads one fact of each movement and says what it is worth. Weights are brought to 100 together.

        criterion load at long lengths
          counts 40 parts
          reads long tension
          worth 0% at 0, 100% at 4
          unknown is worth 40%
          we think so
          because a muscle that works while it is long has more to gain

        criterion nothing else gives out first
          counts 35 parts
          reads target share
          worth 0% at 0, 100% at 4
          unknown is worth 40%
          we are sure

        criterion room to add load
          counts 25 parts
          reads loadability
          worth 0% at 0, 100% at 4
          unknown is worth 40%

        section Rules of thumb

        note A call gives a fact a name, so that rules can be read aloud.

        call steady under load
          when external support is at least 3
          and loadability is at least 3

        give 4 points
          named steady under load
          when steady under load
          because effort goes into the muscle and not into balance

        note A cap holds a movement down however many points it has.

        never above {{MiddleTier}}
          named hard to load
          when loadability is at most 1
          because what cannot get heavier will not carry you for years

        """;

    /// <summary>The file of the other targets.</summary>
    public static string Targets(IEnumerable<StarterTarget> targets) => $"""
        note The other muscle groups that the shared movements train. They are ranked by the same criteria; give each its own benchmark and parts when you come to it.

        {string.Join("\n", targets.Select(target => target.Text))}
        """;

    /// <summary>The section of expectations.</summary>
    public static string Expectations(string first, string second) => $"""

        section What must stay true

        note Placements you would not like to lose. scorerules test says when a change breaks one.

        expect {first}
        expect {second}

        """;
}
