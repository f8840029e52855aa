using System.Text.Json;
using System.Xml.Linq;
using ScoreRules.Language.Text;
using ScoreRules.Modelling;
using ScoreRules.Publishing;
using ScoreRules.Publishing.Derivation;
using ScoreRules.Publishing.Pictures;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Publishing;

/// <summary>What mechanics derives for a movement, as text, JSON and a picture.</summary>
public sealed class DerivationTests
{
    private const int Columns = 78;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Kept() => ["incline dumbbell curl", "seated leg curl"];

    public static TheoryData<string> AllMovements() => [.. Judged.Longreach.Catalogue.Movements.Select(movement => movement.Name)];

    [Theory]
    [MemberData(nameof(Kept))]
    public void The_page_of_a_movement_is_the_one_kept(string movement) =>
        Golden.Check(new DerivationText(Judged.Longreach).Print(Derived(movement)), "tests", "ScoreRules.Tests", "Golden", $"derive-{movement.Replace(' ', '-')}.txt");

    [Fact]
    public void No_line_is_wider_than_a_terminal() =>
        Judged.Longreach.Catalogue.Movements.Take(40).SelectMany(movement => new DerivationText(Judged.Longreach).Print(Derived(movement.Name)).Split('\n'))
            .Where(line => DisplayColumns.Width(line) > Columns).ShouldBeEmpty();

    [Fact]
    public void A_machine_without_a_cam_says_that_the_radius_is_missing_and_what_it_would_give()
    {
        var page = OneLine(new DerivationText(Judged.Longreach).Print(Derived("seated leg curl")));
        page.ShouldContain("Load over the range: cannot be worked out");
        page.ShouldContain("The cam radius by angle is not stated. The radius of the cam at several angles would make the load profile computable");
        page.ShouldContain("No value for: peak moment");
        page.ShouldContain("longest length 98 %");
    }

    [Fact]
    public void Cautions_stand_before_the_numbers_and_the_notice_stands_at_the_end()
    {
        var page = new DerivationText(Judged.Longreach).Print(Derived("seated leg curl"));
        page.IndexOf("\nFirst  ", StringComparison.Ordinal).ShouldBeInRange(1, page.IndexOf("\nWhose body", StringComparison.Ordinal));
        OneLine(page).ShouldEndWith("Education, not medical advice. Your gym's rules, local codes and licensed professionals come first.");
    }

    [Theory]
    [MemberData(nameof(Kept))]
    [InlineData("barbell back squat")]
    [InlineData("standing cable fly")]
    public void The_document_keeps_to_its_schema(string movement) =>
        SchemaCheck.Faults(JudgementJson.Derive(Judged.Longreach, Derived(movement)), JudgementSchema.All.Single(schema => schema.Name == "derive").Schema).ShouldBeEmpty();

    [Fact]
    public void The_document_carries_facts_with_interval_and_grade_and_a_curve_of_61_steps()
    {
        using var json = JsonDocument.Parse(JudgementJson.Derive(Judged.Longreach, Derived("incline dumbbell curl")));
        var root = json.RootElement;
        var length = root.GetProperty("facts").EnumerateArray().First(fact => fact.GetProperty("fact").GetString() == "longest length under load");
        length.GetProperty("low").GetDouble().ShouldBeLessThan(length.GetProperty("value").GetDouble());
        length.GetProperty("high").GetDouble().ShouldBeGreaterThan(length.GetProperty("value").GetDouble());
        length.GetProperty("grade").GetString().ShouldBe("B");
        root.GetProperty("curve").GetProperty("angle").GetArrayLength().ShouldBe(61);
        root.GetProperty("curve").GetProperty("moment").GetArrayLength().ShouldBe(61);
        root.GetProperty("curve").GetProperty("length").EnumerateObject().Select(muscle => muscle.Name).ShouldContain("brachialis");
        root.GetProperty("facts").EnumerateArray().Any(fact => fact.TryGetProperty("muscle", out _)).ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(AllMovements))]
    public void Every_picture_is_well_formed_says_what_it_shows_and_fetches_nothing(string movement)
    {
        var drawn = Picture(movement);
        drawn.ShouldBe(Picture(movement));
        var picture = XDocument.Parse(drawn).Root!;
        picture.Name.ShouldBe(Svg + "svg");
        picture.Attribute("role")!.Value.ShouldBe("img");
        var ids = picture.Attribute("aria-labelledby")!.Value.Split(' ');
        new[] { picture.Element(Svg + "title"), picture.Element(Svg + "desc") }.Select(words => words!.Attribute("id")!.Value).ShouldBe(ids);
        picture.Descendants().Select(element => element.Name.LocalName).Distinct().ShouldBeSubsetOf(["title", "desc", "g", "line", "polyline", "polygon", "circle", "rect", "text"]);
        picture.Descendants().Attributes().Select(attribute => attribute.Name.LocalName).ShouldNotContain("href");
        drawn.ShouldNotContain("NaN");
        drawn.ShouldNotContain("Infinity");
    }

    /// <summary>The figures are three, start to end, and the angle under each is that of the movement's own lines.</summary>
    [Fact]
    public void The_figures_are_labelled_with_the_stated_angles()
    {
        var words = XDocument.Parse(Picture("incline dumbbell curl")).Descendants(Svg + "text").Select(text => text.Value).ToList();
        words.ShouldContain("start, 5°");
        words.ShouldContain("end, 130°");
        words.ShouldContain("weight");
        words.ShouldContain("lengthened third");
    }

    [Fact]
    public void A_movement_without_joints_gives_no_picture_and_says_what_would_change_that()
    {
        var judgement = Judged.Text(
            """
            ruleset Small
              version 1

            attribute push
              rated 0 to 4

            muscle brachialis

            target forearm benders
              made of brachialis 100 parts
              benchmark strict curl

            movement strict curl
              trains forearm benders
              push is 2
            """);
        var movement = judgement.Movement("strict curl");
        var derived = new DerivedFactSource(judgement.Ruleset).Of(movement, movement.Trains[0], withIntervals: true);

        MovementPicture.Draw(judgement.Ruleset, derived).ShouldBeNull();
        OneLine(new DerivationText(judgement).Print(derived)).ShouldContain("No joint angles are stated for \"strict curl\", so mechanics says nothing about it.");
        SchemaCheck.Faults(JudgementJson.Derive(judgement, derived), JudgementSchema.All.Single(schema => schema.Name == "derive").Schema).ShouldBeEmpty();
    }

    private static string Picture(string movement) => MovementPicture.Draw(Judged.Longreach.Ruleset, Derived(movement, withIntervals: false))!;

    private static DerivedMovement Derived(string movement, bool withIntervals = true)
    {
        var found = Judged.Longreach.Movement(movement);
        return new DerivedFactSource(Judged.Longreach.Ruleset).Of(found, found.Trains[0], withIntervals);
    }

    private static string OneLine(string page) => string.Join(' ', page.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
