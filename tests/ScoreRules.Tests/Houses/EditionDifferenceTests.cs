using System.Globalization;
using System.Text;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Tests.Support;
using ScoreRules.Tiering;
using Xunit;

namespace ScoreRules.Tests.Houses;

/// <summary>What moves when the second edition of Longreach reads mechanics instead of two ratings: a page for readers, kept up to date.</summary>
public sealed class EditionDifferenceTests
{
    private const string Head = """
        # Longreach, first and second edition

        *Education, not medical advice. Your gym's rules, local codes and licensed professionals come first. Both editions are invented.*

        The second edition (`rulesets/longreach-second`) reads `loaded length in the long third` for tension when lengthened and
        `longest length under load` for stretch, where the first rates both from 0 to 4. Everything else is the same. Below stands every
        movement whose tier changed. "Not known" means that the cam or another input is not recorded, or that the muscles are known too
        badly; the criterion then has its worth of something unknown. A value with an asterisk cannot be told apart from the benchmark's:
        no clear order on principle.


        """;

    [Fact]
    public void The_page_says_what_moved() => Golden.Check(Page(), "docs", "editions", "longreach-second.md");

    private static string Page()
    {
        var (first, second) = (Judged.Longreach, Judged.House("longreach-second"));
        var text = new StringBuilder(Head);
        var (moved, all) = (0, 0);
        foreach (var ranking in second.Rankings)
        {
            var before = first.Target(ranking.Target.Name);
            var rows = ranking.Placements.Where(placement => before.Of(placement.Row.Movement) is { } old && old.Tier.Name != placement.Tier.Name).ToList();
            (moved, all) = (moved + rows.Count, all + ranking.Placements.Length);
            if (rows.Count > 0)
            {
                text.Append(CultureInfo.InvariantCulture, $"## {ranking.Target.Name}, against the {ranking.Benchmark!.Movement.Name}\n\n");
                text.Append("| movement | first edition | second edition | tension rated | derived | stretch rated | derived |\n| --- | --- | --- | ---: | ---: | ---: | ---: |\n");
                rows.ForEach(placement => text.Append(Row(first, second, ranking, before.Of(placement.Row.Movement)!, placement)));
                text.Append('\n');
            }
        }

        return text.Append(CultureInfo.InvariantCulture, $"{moved} of {all} placements stand in another tier.\n").ToString();
    }

    private static string Row(Judgement first, Judgement second, TargetRanking ranking, Placement before, Placement after) => string.Create(CultureInfo.InvariantCulture,
        $"| {after.Row.Movement.Name} | {Told(before)} | {Told(after)} | {Rated(first, before, "long tension")} | {Derived(second, ranking, after, "loaded length in the long third")} | {Rated(first, before, "stretch")} | {Derived(second, ranking, after, "longest length under load")} |\n");

    private static string Told(Placement placement) => string.Create(CultureInfo.InvariantCulture, $"{placement.Tier.Name} ({Rounding.Printed(placement.Gap, 1):+0.0;-0.0;0.0})");

    private static string Rated(Judgement judgement, Placement placement, string name) => Number(judgement, placement.Row, name, "0");

    private static string Derived(Judgement judgement, TargetRanking ranking, Placement placement, string name)
    {
        var number = Number(judgement, placement.Row, name, "0 '%'");
        return number != "not known" && judgement.Derived!.AreApart(placement.Row, ranking.Benchmark!, name) == false ? number + " *" : number;
    }

    private static string Number(Judgement judgement, PlacementRow row, string name, string format)
    {
        AttributeDefinition attribute = judgement.Ruleset.Attributes.Single(attribute => attribute.Name == name);
        var value = judgement.Inferred!.Facts.Fact(row.Index, attribute).Value;
        return value.IsKnown ? value.Number.ToString(format, CultureInfo.InvariantCulture) : "not known";
    }
}
