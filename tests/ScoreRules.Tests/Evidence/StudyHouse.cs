using System.Globalization;
using System.Text;
using ScoreRules.Evidence;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Evidence;

/// <summary>
/// A house of one criterion, so that principle scores can be read off the text: a movement rated r scores 10 r. Movements of one kind are
/// alike, the kind and a number of degrees make up their likeness.
/// </summary>
internal static class StudyHouse
{
    public const string Scale = "evidence\n  principles may be off by 6 points\n  one standard deviation is worth 20 points\n  a lone study adds 3 points of doubt\n";

    /// <summary>The text of a house.</summary>
    /// <param name="statements">Studies, evidence, places and whatever else.</param>
    /// <param name="movements">Name, rating 0 to 10, kind and angle of each; the first is the benchmark.</param>
    public static string Text(string statements, params (string Name, double Rating, string Kind, int Angle)[] movements)
    {
        var text = new StringBuilder($$"""
            ruleset Test
              version 1
              checked 4 May 2031 by the tests
              judges muscle growth

            attribute tension
              rated 0 to 10

            attribute kind
              one of rope, bar, ring
              counts for likeness

            attribute elbow angle
              in °
              counts for likeness

            muscle long head

            muscle short head

            target arm
              made of long head 60 parts, short head 40 parts
              benchmark {{movements[0].Name}}

            tiers
              Above is from 5 points above the benchmark
              Level is within 5 points of the benchmark
              Below is the rest

            say slightly means at least 2 points
            say clearly means at least 10 points
            say about the same means within 3 points

            criterion tension
              counts 100
              reads tension
              worth 0% at 0, 100% at 10

            """);
        foreach (var (name, rating, kind, angle) in movements)
        {
            text.Append(CultureInfo.InvariantCulture, $"\nmovement {name}\n  trains arm\n  tension is {rating}, kind is {kind}, elbow angle is {angle} °\n");
        }

        return text.Append('\n').Append(statements).ToString();
    }

    /// <summary>A study that is weighed.</summary>
    public static string Study(string name, string lines, string strength = "weigh it") =>
        $"\nstudy {name}\n  compares movements\n{string.Concat(lines.Split(';').Select(line => $"  {line.Trim()}\n"))}  outcome muscle growth\n  {strength}\n";

    /// <summary>What became of a movement.</summary>
    public static RowEvidence Moved(this Judgement judgement, string movement) =>
        judgement.Evidence!.Of(judgement.Target("arm").Of(judgement.Movement(movement))!.Row);
}
