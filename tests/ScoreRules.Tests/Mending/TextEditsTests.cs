using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mending;

public sealed class TextEditsTests
{
    private static readonly SourceText Source = new("a.rules", "abcdef");

    [Fact]
    public void Edits_are_made_by_place_whatever_their_order() =>
        TextEdits.Apply(Source.Text, [Edit(4, 1, "E"), Edit(0, 0, ">"), Edit(1, 2, "")]).ShouldBe(">adEf");

    [Theory]
    [InlineData(0, 2, 2, 2, true)]
    [InlineData(0, 3, 2, 2, false)]
    [InlineData(2, 0, 2, 0, false)]
    [InlineData(1, 3, 4, 0, false)]
    [InlineData(1, 3, 1, 0, false)]
    [InlineData(1, 2, 4, 0, true)]
    [InlineData(4, 0, 1, 2, true)]
    [InlineData(1, 3, 2, 1, false)]
    public void Two_edits_are_made_together_only_if_neither_touches_what_the_other_changes(int start, int length, int otherStart, int otherLength, bool together)
    {
        TextEdit[] edits = [Edit(start, length, "x"), Edit(otherStart, otherLength, "y")];
        var made = TextEdits.Compatible(edits, edit => edit);
        made.Length.ShouldBe(together ? 2 : 1);
        made.ShouldContain(edits[0]);
    }

    private static TextEdit Edit(int start, int length, string replacement) => new(Source.At(new SourceSpan(start, length)), replacement);
}
