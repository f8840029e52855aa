using System.Globalization;
using System.Text.Json;
using CsCheck;
using ScoreRules.Answers.Firmness;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

public sealed class FirmnessTests
{
    // Of the weights in the reference: all are whole numbers of sixtieths.
    private const int Whole = 60;

    [Theory]
    [InlineData("how firmly long is above steady", "far 40 (-20), firm 60 (+20)")]
    [InlineData("how firmly both is above long", "firm 15 (-25), far 160 (+100)")]
    public void The_weights_are_what_a_pencil_finds(string question, string told)
    {
        var finding = Quayside.Ask<FirmnessAnswer>(question).Answer.Findings.Single();
        finding.Verdict.ShouldBe(FirmnessVerdict.OneWeight);
        string.Join(", ", finding.Swaps.Select(swap => string.Create(CultureInfo.InvariantCulture, $"{swap.Criterion.Name} {swap.Level:0.######} ({swap.Parts:+0.######;-0.######})"))).ShouldBe(told);
        finding.Swaps.ShouldAllBe(swap => swap.IsConfirmed);
    }

    [Fact]
    public void What_is_nowhere_worse_cannot_be_turned_round() => Quayside.Ask<FirmnessAnswer>("how firmly both is above plain").Answer.Findings.Single().Verdict.ShouldBe(FirmnessVerdict.Impossible);

    /// <summary>Smallest weight changes of Reference/statistics/05-weight-swap.json (closed form, exact fractions), through a whole house.</summary>
    [Fact]
    public void Outside_cases_are_met()
    {
        using var json = JsonDocument.Parse(Repository.Read("tests", "ScoreRules.Tests", "Reference", "statistics", "05-weight-swap.json"));
        foreach (var example in json.RootElement.GetProperty("cases").EnumerateArray())
        {
            var weights = Numbers(example, "weights").Select(share => share!.Value * Whole).ToList();
            var finding = Quayside.AskIn<FirmnessAnswer>(House(weights, Numbers(example, "a"), Numbers(example, "b")), "how firmly first is above second").Answer.Findings.Single();
            if (example.TryGetProperty("impossible", out _))
            {
                finding.Verdict.ShouldBe(FirmnessVerdict.Impossible);
                continue;
            }

            foreach (var (share, at) in Numbers(example, "single_weight_target_others_rescaled").Select((share, at) => (share, at)))
            {
                var swap = finding.Swaps.FirstOrDefault(swap => swap.Criterion.Name == $"c{at}");
                (swap is null).ShouldBe(share is null, $"{at}");
                (swap is null ? 0 : swap.Level / (swap.Level + weights.Sum() - weights[at])).ShouldBe(share ?? 0, 1e-12);
                (swap?.IsConfirmed ?? true).ShouldBeTrue();
            }
        }
    }

    /// <summary>Judging again confirms every weight told; and where none can turn it round, none of many random weights does.</summary>
    [Fact]
    public void Weights_are_confirmed_by_judging_again() =>
        Gen.Select(Gen.Int[1, 9].Array[3], Gen.Int[0, 10].Array[3], Gen.Int[0, 10].Array[3], Gen.Int[1, 1000].Array[3].Array[50]).Sample((weights, a, b, others) =>
        {
            var finding = Quayside.AskIn<FirmnessAnswer>(House([.. weights], [.. a], [.. b]), "how firmly first is above second").Answer.Findings.Single();
            finding.Swaps.ShouldAllBe(swap => swap.IsConfirmed);
            var ahead = Ahead(weights, a, b);
            (finding.Verdict != FirmnessVerdict.Impossible || others.All(other => Math.Sign(Ahead(other, a, b)) == Math.Sign(ahead))).ShouldBeTrue();
        }, iter: 25, threads: 1);

    private static double Ahead(int[] weights, int[] a, int[] b) => weights.Select((weight, at) => weight * (a[at] - b[at])).Sum();

    private static List<double?> Numbers(JsonElement example, string name) => [.. example.GetProperty(name).EnumerateArray().Select(text => text.ValueKind == JsonValueKind.Null ? null : Fraction(text.GetString()!))];

    private static double? Fraction(string text)
    {
        var parts = text.Split('/').Select(part => double.Parse(part, CultureInfo.InvariantCulture)).ToList();
        return parts.Count == 1 ? parts[0] : parts[0] / parts[1];
    }

    private static string House(IReadOnlyList<double> weights, IReadOnlyList<double?> a, IReadOnlyList<double?> b)
    {
        var criteria = string.Concat(weights.Select((weight, at) => string.Create(CultureInfo.InvariantCulture, $"attribute q{at}\n  rated 0 to 10\n\ncriterion c{at}\n  counts {Math.Round(weight, 9)} parts\n  reads q{at}\n  worth 0% at 0, 100% at 10\n\n")));
        return $"muscle biceps\n\ntarget arms\n  made of biceps 100 parts\n  benchmark second\n\ntiers\n  Up is from 1 points above the benchmark\n  Rest is the rest\n\n{criteria}{Movement("first", a)}{Movement("second", b)}";
    }

    private static string Movement(string name, IReadOnlyList<double?> values) =>
        $"movement {name}\n  trains arms\n  {string.Join(", ", values.Select((value, at) => string.Create(CultureInfo.InvariantCulture, $"q{at} is {value}")))}\n\n";
}
