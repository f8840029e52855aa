using System.Globalization;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>Each row of model-vs-trials.csv worked out again: lengths to the digits given, and whether length goes the way the trial went.</summary>
public sealed class ModelAgainstTrialsTests
{
    // One digit more than given, for rounding on both sides.
    private const double Digits = 0.0015;

    /// <summary>A difference of length this small counts as none; our own choice, and half of what a house may call an order.</summary>
    private const double NoDifference = 0.05;

    /// <summary>
    /// Cells we do not reproduce. Row 21: our length of a hanging arm is the mean over all planes. Row 22: the file does not say where the
    /// pulley stands; 0.60 m in front and 0.60 m below the elbow is taken.
    /// </summary>
    private static readonly string[] Misses =
    [
        "21, peak_A: ours 0.886, given 0.890",
        "21, peak_B: ours 0.886, given 0.890",
        "21, moment_weighted_length_A: ours 0.658, given 0.660",
        "21, diff_weighted: ours 0.097, given +0.099",
        "22, moment_weighted_length_B: ours 0.413, given 0.399",
        "22, diff_weighted: ours 0.088, given +0.102",
    ];

    /// <summary>Rows in which length does not go the way the trial went.</summary>
    private static readonly int[] Disagreements = [1, 18, 21, 22];

    [Fact]
    public void Lengths_are_those_given_but_for_the_listed_cells()
    {
        var found = new List<string>();
        foreach (var (row, index) in ModelPart.Rows("model-vs-trials").Select((row, index) => (row, index)))
        {
            var (a, b, _) = TrialContrasts.All[index];
            a.Part.ShouldBe(row["muscle"].Replace('_', ' '));
            Compare("mean_norm_length_A", a.Mean);
            Compare("mean_norm_length_B", b.Mean);
            Compare("diff", a.Mean - b.Mean);
            Compare("peak_A", a.Peak);
            Compare("peak_B", b.Peak);
            Compare("moment_weighted_length_A", a.MomentWeighted);
            Compare("moment_weighted_length_B", b.MomentWeighted);
            Compare("diff_weighted", a.MomentWeighted - b.MomentWeighted);

            void Compare(string column, double ours)
            {
                if (Math.Abs(ours - ModelPart.Number(row[column])) > Digits)
                {
                    found.Add(string.Create(CultureInfo.InvariantCulture, $"{index}, {column}: ours {ours:0.000}, given {row[column]}"));
                }
            }
        }

        found.ShouldBe(Misses);
    }

    [Fact]
    public void Length_goes_the_way_of_the_trial_but_for_the_listed_rows() =>
        TrialContrasts.All.Select((row, index) => (row, index)).Where(pair => pair.row.Trial is { } trial && trial != Order(pair.row)).Select(pair => pair.index).ShouldBe(Disagreements);

    [Fact]
    public void The_reference_lists_the_same_disagreements() =>
        ModelPart.Rows("model-vs-trials").Select((row, index) => (row, index)).Where(pair => pair.row["agrees"] == "no").Select(pair => pair.index).ShouldBe(Disagreements);

    private static int Order((Sweep A, Sweep B, int? Trial) row)
    {
        var difference = row.A.MomentWeighted - row.B.MomentWeighted;
        return Math.Abs(difference) < NoDifference ? 0 : Math.Sign(difference);
    }
}
