using System.Globalization;
using System.Text;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Tests.Mechanics.Statics;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Facts;

/// <summary>
/// Our facts beside those of independent code over the same inputs. Nothing is tuned to it: the differences are kept in a report, and only
/// what is plain arithmetic (lengths over the same postures) is held to agree.
/// </summary>
public sealed class SecondOpinionTests
{
    private static readonly (string Theirs, string Ours)[] Columns =
    [
        ("share_long_third", "share of load in the lengthened third"),
        ("mean_long_third_ratio", "load profile"),
        ("long_third_loaded_length", "loaded length in the long third"),
        ("length_moment_weighted", "moment-weighted length"),
        ("length_mean", "mean length"),
        ("length_max", "longest length"),
        ("longest_loaded_50", "longest length under load"),
        ("length_excursion", "length excursion"),
    ];

    private static readonly FactOptions Options = new() { WithIntervals = false, AcceptsEvenLoad = true };

    [Fact]
    public void Lengths_over_the_same_postures_agree() =>
        Differences().Where(row => row.Column is "length_mean" or "length_max" or "length_excursion" && Math.Abs(row.Difference) > 0.005).Select(row => row.ToString()).ShouldBeEmpty();

    [Fact]
    public void The_differences_are_kept_method_by_method()
    {
        var text = new StringBuilder("method,fact,rows,meanDifference,largestDifference,where\n");
        foreach (var group in Differences().GroupBy(row => (row.Method, row.Column)))
        {
            var worst = group.MaxBy(row => Math.Abs(row.Difference))!;
            text.AppendLine(CultureInfo.InvariantCulture, $"{group.Key.Method},{Columns.Single(column => column.Theirs == group.Key.Column).Ours},{group.Count()},{group.Average(row => Math.Abs(row.Difference)):0.000},{worst.Difference:+0.000;-0.000;0.000},{worst.Movement} {worst.Scope}");
        }

        Golden.Check(text.ToString().ReplaceLineEndings("\n"), "tests", "ScoreRules.Tests", "Golden", "facts-against-second-opinion.csv");
    }

    private static IEnumerable<Row> Differences()
    {
        var geometry = GeometryRows.All.ToDictionary(row => row["movement"], StringComparer.Ordinal);
        foreach (var row in ReferenceTable.Rows("mechanics/derived-facts-second-opinion.csv"))
        {
            var inputs = geometry[row["movement"]];
            var facts = MovementFacts.Of(GeometryRows.Mechanism(inputs), Targets.Of(row["target_group"], row["scope"], row["movement"]), Options);
            foreach (var (theirs, ours) in Columns)
            {
                var value = facts[ours].Value.ShouldNotBeNull($"{row["movement"]}: {ours}: {string.Join(' ', facts[ours].Missing)}");
                yield return new Row(inputs["method"], row["movement"], row["scope"], theirs, value - double.Parse(row[theirs], CultureInfo.InvariantCulture));
            }
        }
    }

    private sealed record Row(string Method, string Movement, string Scope, string Column, double Difference);
}
