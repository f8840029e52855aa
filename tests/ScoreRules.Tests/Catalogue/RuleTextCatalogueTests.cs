using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

/// <summary>The catalogue built from rule text that was really parsed and bound.</summary>
public sealed class RuleTextCatalogueTests
{
    private const string Vocabulary = """
        attribute stretch
          rated 0 to 4

        attribute grip
          one of pronated, neutral

        attribute set-up
          in s

        muscle biceps

        target arms
          made of biceps 1 part
          benchmark curl

        movement curl
          trains arms
          stretch is 2, set-up is 45 s

        """;

    [Fact]
    public void A_sound_text_yields_no_findings_and_all_facts()
    {
        var (catalogue, findings) = Build("movement cable curl\n  like curl\n  but stretch is 3\n  grip is neutral\n");
        findings.ToSorted().ShouldBeEmpty();
        catalogue.Find("cable curl").ShouldNotBeNull().Facts.Take(3).Select(fact => (fact.Value.IsKnown, fact.Origin))
            .ShouldBe([(true, FactOrigin.Stated), (true, FactOrigin.Stated), (true, FactOrigin.Inherited)]);
    }

    [Theory]
    [InlineData("movement press\n  trains amrs\n", "SR2005 [amrs]")]
    [InlineData("movement cable curl\n  like crul\n  but stretch is 3\n", "SR2004 [crul]")]
    [InlineData("movement cable curl\n  like cable curl\n  but stretch is 3\n", "SR3008 [cable curl]")]
    public void One_fault_of_a_movement_is_one_message(string text, string place)
    {
        Told.Places(Build(text).Findings).ShouldBe([place]);
    }

    [Theory]
    [InlineData("movement cable curl\n  like curl\n  stretch is 3\n", "SR7005 [stretch is 3]")]
    [InlineData("movement cable curl\n  like curl\n  at a guess set-up is 60 s give or take 10 s\n", "SR7005 [set-up is 60 s give or take 10 s]")]
    [InlineData("movement cable curl\n  like curl\n  but grip is neutral\n", "SR7004 [grip is neutral]")]
    [InlineData("movement cable curl\n  trains arms\n  but at a guess stretch is 1\n", "SR7004 [stretch is 1]")]
    public void The_edit_that_needs_no_asking_is_right_in_real_rule_text(string text, string place)
    {
        var (_, findings) = Build(text);
        Told.Places(findings).ShouldBe([place]);
        var mended = Told.Mended(Told.Only(findings)).ShouldNotBeNull();
        Build(mended[Vocabulary.Length..]).Findings.ToSorted().ShouldBeEmpty(mended);
    }

    [Theory]
    [InlineData("movement cable curl\n  like curl\n  grip is neutral, stretch is 3\n")]
    [InlineData("movement cable curl\n  like curl\n  grip is neutral,\n    stretch is 3\n")]
    public void Among_other_facts_there_is_advice_without_an_edit(string text)
    {
        var finding = Told.Only(Build(text).Findings);
        (finding.Code, finding.Location.Text).ShouldBe(("SR7005", "stretch is 3"));
        Told.Offered(finding).ShouldBeEmpty();
    }

    private static (MovementCatalogue Catalogue, DiagnosticBag Findings) Build(string movements)
    {
        var reader = RulesetReader.Read([new SourceText("house.rules", Vocabulary + movements)]);
        var ruleset = reader.Bind([]);
        return (CatalogueBuilder.Build(ruleset, reader.Findings), reader.Findings);
    }
}
