using ScoreRules.Answers.Beliefs;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

public sealed class BeliefTests
{
    [Fact]
    public void What_rests_on_one_statement_is_what_a_pencil_finds()
    {
        var answer = Quayside.Ask<BeliefAnswer>("what is shaky for arms").Answer;
        answer.Findings.Select(Told).ShouldBe(["far: long Good>Level, steady Good>Keep", "firm: steady Good>Level", "both at once: "]);
        (answer.Fragile, answer.Placements).ShouldBe((2, 5));
    }

    [Fact]
    public void One_movement_rests_on_what_it_would_move_without() =>
        Quayside.Ask<BeliefAnswer>("where long is shaky").Answer.Findings.Where(finding => !finding.Moves.IsEmpty).Select(Told).ShouldBe(["far: long Good>Level", "slippery: long Good>Keep"]);

    [Fact]
    public void A_called_fact_is_taken_out_with_all_its_ways()
    {
        var answer = Quayside.Ask<BeliefAnswer>("what rests on ready", "call ready\n  when handle is free and reach is 4\n").Answer;
        answer.Findings.Single().Statements.Length.ShouldBe(2);
    }

    [Fact]
    public void What_protects_somebody_is_never_taken_out()
    {
        const string more = "never above Level\n  named with a coach\n  when audience has older adult\n  we may be wrong\n\nprofile elder\n  audience older adult\n";
        Quayside.Ask<BeliefAnswer>("what is shaky", more, "elder").Answer.Findings.ShouldNotContain(finding => finding.Statements[0].Info.Name == "with a coach");
        Quayside.Ask<BeliefAnswer>("what rests on with a coach", more, "elder").Answer.Findings.ShouldBeEmpty();
    }

    /// <summary>Taking a statement out gives what the text without it gives.</summary>
    [Fact]
    public void It_is_the_ranking_of_the_text_without_the_statement()
    {
        var (answer, judgement) = Quayside.Ask<BeliefAnswer>("what rests on firm");
        var text = Quayside.Text(Quayside.Movements);
        var (start, end) = (text.IndexOf("criterion firm", StringComparison.Ordinal), text.IndexOf("call ready", StringComparison.Ordinal));
        var without = Judged.Text(text[..start] + text[end..]);
        var expected = judgement.Target("arms").Placements.Select(placement => (placement.Row.Movement.Name, placement.Tier.Name, Now: without.Target("arms").Of(without.Movement(placement.Row.Movement.Name))!.Tier.Name)).Where(row => row.Item2 != row.Now);
        answer.Findings.Single().Moves.Select(move => (move.Row.Movement.Name, move.Before!.Name, move.After!.Name)).ShouldBe(expected, ignoreOrder: true);
    }

    private static string Told(BeliefFinding finding) =>
        $"{finding.Statements[0].Info.Name}: {string.Join(", ", finding.Moves.Select(move => $"{move.Row.Movement.Name} {move.Before?.Name ?? "out"}>{move.After?.Name ?? "out"}"))}";
}
