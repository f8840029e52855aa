using ScoreRules.Houses;
using ScoreRules.Publishing;
using ScoreRules.Tests.Binding;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

/// <summary>A house of which a part cannot be read can be ranked by the rest, only when asked, and it says what is missing.</summary>
public sealed class DespiteErrorsTests
{
    private const int EveryNth = 397;
    private static readonly HouseSources Linden = HouseFolder.Read(Repository.PathOf("rulesets", "linden-court"));
    private static readonly HouseFile Rules = Linden.Files.Single(file => file.Path.EndsWith("linden-court/house.rules", StringComparison.Ordinal));

    [Fact]
    public void Without_the_option_errors_stop_a_ranking()
    {
        var broken = With(Rules.Text.Replace("counts 30 parts", "counts thirty parts", StringComparison.Ordinal));
        Judge.Run(broken).Rankings.ShouldBeEmpty();
        Judge.Run(broken, new JudgeOptions { DespiteErrors = true }).Rankings.Length.ShouldBe(9);
    }

    [Fact]
    public void What_may_protect_people_is_named_first()
    {
        var broken = With(Rules.Text.Replace("counts 30 parts", "counts thirty parts", StringComparison.Ordinal).Replace("  severity medium", "  severity hihg", StringComparison.Ordinal));
        var judgement = Judge.Run(broken, new JudgeOptions { DespiteErrors = true });
        var text = string.Join(' ', new RankingText(judgement).Print(judgement.Rankings).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

        text.ShouldContain("made despite 2 errors");
        text.IndexOf("may take a caution or a limit away", StringComparison.Ordinal).ShouldBeLessThan(text.IndexOf("SR1002: \"thirty\"", StringComparison.Ordinal));
    }

    /// <summary>Half of the statements broken, each in its own way: whatever is left is ranked or refused, and nothing is thrown.</summary>
    [Fact]
    public void Any_slips_leave_a_ranking_or_a_refusal()
    {
        var slips = WordSlip.In(Rules.Text).Where((_, i) => i % EveryNth == 0).ToList();
        slips.Count.ShouldBeGreaterThan(5);
        foreach (var slip in slips)
        {
            Print(Judge.Run(With(slip.Text), new JudgeOptions { DespiteErrors = true }));
        }

        var statements = Rules.Text.Split("\n\n");
        for (var seed = 0; seed < 8; seed++)
        {
            Print(Judge.Run(With(string.Join("\n\n", statements.Select((text, i) => (i * 7919 + seed * 104729) % 2 == 0 ? text : Broken(text, i)))), new JudgeOptions { DespiteErrors = true }));
        }
    }

    private static void Print(Judgement judgement)
    {
        if (judgement.Explainer is not null)
        {
            new RankingText(judgement).Print(judgement.Rankings).ShouldNotBeEmpty();
        }
    }

    private static string Broken(string statement, int i)
    {
        var words = statement.Split(' ');
        words[i % words.Length] = "qwxz";
        return string.Join(' ', words);
    }

    private static HouseSources With(string text) => Linden with { Files = [.. Linden.Files.Select(file => file == Rules ? file with { Text = text } : file)] };
}
