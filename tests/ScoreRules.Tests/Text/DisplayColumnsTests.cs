using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Text;

/// <summary>The marks stand under the very characters, however wide these are.</summary>
public sealed class DisplayColumnsTests
{
    [Theory]
    [InlineData("plain [here] text", "plain here text", "      ^^^^")]
    [InlineData("[first]", "first", "^^^^^")]
    [InlineData("\tcounts[\t]5", "    counts  5", "          ^^")]
    [InlineData("\t[counts]\t5", "    counts  5", "    ^^^^^^")]
    [InlineData("ab\t[c]", "ab  c", "    ^")]
    [InlineData("💪 [power]", "💪 power", "   ^^^^^")]
    [InlineData("[💪] power", "💪 power", "^^")]
    [InlineData("👩\u200D👧 [x]", "👩�👧 x", null)]
    [InlineData("🇩🇪 [x]", "🇩🇪 x", "   ^")]
    [InlineData("cafe\u0301 [x]", "cafe\u0301 x", "     ^")]
    [InlineData("caf[e\u0301] x", "cafe\u0301 x", "   ^")]
    [InlineData("長い[筋肉] x", "長い筋肉 x", "    ^^^^")]
    [InlineData("ｗ [x]", "ｗ x", "   ^")]
    [InlineData("a\u200B[x]", "a�x", "  ^")]
    [InlineData("⚡[x]", "⚡x", "  ^")]
    [InlineData("at the end[]", "at the end", "          ^")]
    public void Marks_stand_under_the_text(string marked, string printed, string? marks)
    {
        var open = marked.IndexOf('[', StringComparison.Ordinal);
        var close = marked.IndexOf(']', StringComparison.Ordinal) - 1;
        var source = new SourceText("text.rules", marked.Replace("[", "", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal));
        var lines = DiagnosticText.Full(new Diagnostic("SR0000", Severity.Error, "x", new Label(source.At(SourceSpan.FromBounds(open, close)), ""))).Split('\n');

        lines[3].ShouldBe($"1 | {printed}");
        if (marks is not null)
        {
            lines[4].ShouldBe($"  | {marks}");
        }
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("abc", 3)]
    [InlineData("é", 1)]
    [InlineData("e\u0301", 1)]
    [InlineData("\u0301", 0)]
    [InlineData("長", 2)]
    [InlineData("한", 2)]
    [InlineData("👍🏽", 2)]
    [InlineData("❤\uFE0F", 2)]
    public void A_text_is_as_wide_as_it_is_shown(string text, int columns) => DisplayColumns.Width(text).ShouldBe(columns);

    [Fact]
    public void Two_remarks_on_one_line_share_it()
    {
        var source = new SourceText("text.rules", "grip is pronated and grip is supinated");
        var text = DiagnosticText.Full(new Diagnostic("SR0000", Severity.Error, "x", new Label(source.At(new SourceSpan(21, 17)), "and this"))
        {
            Others = [new Label(source.At(new SourceSpan(0, 16)), "this")],
        });

        text.Split('\n')[3..].ShouldBe(["1 | grip is pronated and grip is supinated", "  | ---------------- this", "  |                      ^^^^^^^^^^^^^^^^^ and this"]);
    }
}
