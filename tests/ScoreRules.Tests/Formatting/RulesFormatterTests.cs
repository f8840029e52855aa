using ScoreRules.Language.Formatting;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Formatting;

public sealed class RulesFormatterTests
{
    [Theory]
    [InlineData("CRITERION  stretch\n\tCounts   14\n      READS stretch\n  worth 0 % at 0 ,100% at 4", "criterion stretch\n  counts 14\n  reads stretch\n  worth 0% at 0, 100% at 4\n")]
    [InlineData("call a\n  when b IS at least 3 And c Has any of d,\n  e,\n            f", "call a\n  when b is at least 3 and c has any of d,\n    e,\n    f\n")]
    [InlineData("work out t\n start with s\n plus 60 s\n when x is y\n and z is w\n in s", "work out t\n  start with s\n  plus 60 s\n    when x is y\n    and z is w\n  in s\n")]
    [InlineData("movement m\n  keeps knee flexion 90 degrees, hip flexion 10 °", "movement m\n  keeps knee flexion 90°, hip flexion 10°\n")]
    [InlineData("give 4 point\n  always\n", "give 4 points\n  always\n")]
    [InlineData("give 1 Points\n  always\n", "give 1 point\n  always\n")]
    [InlineData("target t\n  benchmark b\n  made of m 2 part, n 1 parts", "target t\n  benchmark b\n  made of m 2 parts, n 1 part\n")]
    [InlineData("ruleset X\n version 1\n checked 4 m 2031 by   a  friend", "ruleset X\n  version 1\n  checked 4 m 2031 by a  friend\n")]
    [InlineData("study s\n  compares classes of\"a  b\"\n found a is clearly better than b\n outcome o\n people 20   trained  adults", "study s\n  compares classes of \"a  b\"\n  found a is clearly better than b\n  outcome o\n  people 20 trained  adults\n")]
    [InlineData("say a means 3 KG", "say a means 3 kg\n")]
    public void Blanks_words_signs_and_units_get_one_spelling(string written, string laidOut) => Formatted.Text(written).ShouldBe(laidOut);

    [Theory]
    [InlineData("say a means 1 times\n\n\n\nsay b means 2 times", "say a means 1 times\n\nsay b means 2 times\n")]
    [InlineData("say a means 1 times\nsay b means 2 times", "say a means 1 times\nsay b means 2 times\n")]
    [InlineData("expect a is above b\n  because c\nexpect b is above c", "expect a is above b\n  because c\nexpect b is above c\n")]
    [InlineData("say a means 1 times\nnote b", "say a means 1 times\n\nnote b\n")]
    [InlineData("call a\n  when b\n  and c\ncall d\n  when e\n  and f", "call a\n  when b\n  and c\n\ncall d\n  when e\n  and f\n")]
    [InlineData("\n\n  \nnote a\n\n\n", "note a\n")]
    [InlineData("\uFEFFnote a\r\n\r\n\r\nnote b\r\n", "note a\n\nnote b\n")]
    [InlineData("", "")]
    [InlineData("\n \n", "")]
    public void One_blank_line_stands_between_statements_and_short_ones_of_a_kind_may_form_a_list(string written, string laidOut) => Formatted.Text(written).ShouldBe(laidOut);

    [Fact]
    public void Free_text_keeps_every_sign()
    {
        const string Text = "note  “Curly”,  two  blanks, 2,5 and 15s ; 90 degrees \n\nphilosophy   Not  This ,\n        but  that ,too\n\ncaution \"quoted  whole\"\n  always\n  severity low\n  because  a ,b\n  except for x because   y  ,z\n";
        Formatted.Text(Text).ShouldBe("note “Curly”,  two  blanks, 2,5 and 15s ; 90 degrees\n\nphilosophy Not  This ,\n  but  that ,too\n\ncaution \"quoted  whole\"\n  always\n  severity low\n  because a ,b\n  except for x because y  ,z\n");
    }

    [Fact]
    public void What_cannot_be_read_stays_byte_for_byte_and_is_counted()
    {
        const string Broken = "  criterion  b\r\n    raeds   x\r\n\r\n\tcounts 3\r\n\r\n";
        var formatted = RulesFormatter.Format(new SourceText("a.rules", "say   a means 3 times\n" + Broken + "say   b means 3 times\n\nsay c\n   menas 3"));
        formatted.Text.ShouldBe("say a means 3 times\n" + Broken + "say b means 3 times\n\nsay c\n   menas 3");
        formatted.Untouched.ShouldBe(2);
    }

    [Fact]
    public void A_statement_with_a_line_at_the_edge_is_left_alone()
    {
        const string Text = "call   a\nwhen   b\n";
        Formatted.Text(Text).ShouldBe(Text);
    }

    [Theory]
    [MemberData(nameof(Formatted.Files), MemberType = typeof(Formatted))]
    public void Shipped_rule_text_is_laid_out_already(string file)
    {
        var text = File.ReadAllText(Support.Repository.PathOf(file));
        Formatted.Text(text).Split('\n').ShouldBe(text.Split('\n'));
    }
}
