using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Text;

/// <summary>Two spellings of one name are one name.</summary>
public sealed class NameTextTests
{
    [Theory]
    [InlineData("Seated leg curl", "seated  LEG curl")]
    [InlineData("café curl", "cafe\u0301 curl")]
    [InlineData("Über-Zug", "u\u0308ber-zug")]
    [InlineData("farmer's walk", "farmer’s walk")]
    [InlineData("set-up", "set\u2011up")]
    [InlineData(" leg curl ", "leg curl")]
    public void These_are_one_name(string left, string right) => NameText.Same(left, right).ShouldBeTrue();

    [Theory]
    [InlineData("leg curl", "leg curls")]
    [InlineData("cafe", "café")]
    [InlineData("leg curl", "legcurl")]
    public void These_are_two(string left, string right) => NameText.Same(left, right).ShouldBeFalse();

    /// <summary>One pair for each accent, from the canonical decompositions in UnicodeData.txt 15.0.</summary>
    [Theory]
    [InlineData("a\u030A", "å")]
    [InlineData("c\u0327", "ç")]
    [InlineData("n\u0303", "ñ")]
    [InlineData("o\u030B", "ő")]
    [InlineData("s\u030C", "š")]
    [InlineData("z\u0307", "ż")]
    [InlineData("e\u0328", "ę")]
    [InlineData("i\u0304", "ī")]
    [InlineData("g\u0306", "ğ")]
    [InlineData("w\u0302", "ŵ")]
    [InlineData("y\u0308", "ÿ")]
    [InlineData("a\u0300", "à")]
    public void An_accent_is_joined_to_its_letter(string apart, string joined) => NameText.Key(apart).ShouldBe(joined);
}
