using ScoreRules.Houses;
using ScoreRules.Publishing.Editions;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Publishing.Editions;

public sealed class EditionNameTests
{
    [Theory]
    [InlineData("Longreach, second edition", "longreach-second-edition")]
    [InlineData("3.0.0", "3.0.0")]
    [InlineData("../../etc", "etc")]
    [InlineData("  ", "house")]
    [InlineData("Crème & Söhne", "crème-söhne")]
    public void A_slug_is_a_folder_name(string name, string slug) => EditionName.Slug(name).ShouldBe(slug);

    [Theory]
    [InlineData("")]
    [InlineData(".hidden")]
    [InlineData("a/b")]
    [InlineData("a b")]
    [InlineData("INDEX.md")]
    public void Some_names_are_refused(string name) => Should.Throw<HouseException>(() => EditionName.Chosen(name)).Message.ShouldContain("cannot name an edition");

    [Fact]
    public void Versions_are_compared_number_by_number()
    {
        string[] names = ["3.10.0", "3.9", "3.9.1", "3.9-a", "03.9", "", "x"];
        names.Order(NumberedNames.Order).ShouldBe(["", "03.9", "3.9", "3.9-a", "3.9.1", "3.10.0", "x"]);
    }
}
