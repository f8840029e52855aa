using System.Globalization;
using CsCheck;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Evidence;

/// <summary>In whole houses: one study that found A better never lowers A, and never lowers A against anything, whoever is akin to whom.</summary>
public sealed class OneSidedHouseTests
{
    private static readonly string[] Kinds = ["rope", "bar", "ring"];

    private static readonly Gen<(double Rating, int Kind, int Angle)> Movement = Gen.Select(Gen.Int[0, 10].Select(step => (double)step), Gen.Int[0, 2], Gen.Int[0, 180]);

    [Fact]
    public void One_study_never_speaks_against_the_movement_that_it_favours() => Gen.Select(Movement.Array[3, 7], Gen.Bool.Select(strong => strong ? "clearly" : "slightly"), Gen.Int[1, 99], Gen.Bool.Select(decides => decides ? "let it decide" : "weigh it")).Sample(
        (movements, word, floor, strength) =>
        {
            (string, double, string, int)[] named = [.. movements.Select((movement, i) => ($"move {Name(i)}", movement.Rating, Kinds[movement.Kind], movement.Angle))];
            var scale = StudyHouse.Scale + string.Create(CultureInfo.InvariantCulture, $"  spreads to movements at least {floor}% alike\n");
            var judgement = Judged.Text(StudyHouse.Text(scale + StudyHouse.Study("One", $"found move {Name(1)} is {word} better than move {Name(2)}", strength), named));
            var moves = Enumerable.Range(0, named.Length).Select(i => judgement.Moved($"move {Name(i)}").Moved).ToArray();
            moves[1].ShouldBeGreaterThanOrEqualTo(-1e-9);
            moves.ShouldAllBe(other => moves[1] - other >= -1e-9);
        },
        iter: 150);

    private static string Name(int place) => ((char)('a' + place)).ToString();
}
