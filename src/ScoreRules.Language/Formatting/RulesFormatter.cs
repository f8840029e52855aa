using System.Text;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Layout;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Formatting;

/// <summary>
/// Lays rule text out in one way: heads at the edge, their lines set in by two, lines that go on after a comma by four,
/// a blank line between statements. It works on the author's lines, so nothing can be lost; stretches that cannot be
/// read stay as they are, and so does all free text.
/// </summary>
public static class RulesFormatter
{
    /// <summary>The text in its canonical layout; of a text already laid out so, the same text.</summary>
    public static FormattedText Format(SourceText source)
    {
        var text = new StringBuilder(source.Text.Length);
        var printer = new StatementPrinter(source, text);
        var lines = LineView.Of(source);
        SoundStatement? above = null;
        var untouched = 0;
        foreach (var statement in SoundStatement.Of(SyntaxParser.Parse(source)))
        {
            untouched += Between(source, lines, above, statement, text);
            printer.Print(statement);
            above = statement;
        }

        untouched += Between(source, lines, above, null, text);
        return new FormattedText(text.ToString(), untouched);
    }

    // What stands between two sound statements: blank lines, which become one or none, or something to leave alone.
    private static int Between(SourceText source, LineView[] lines, SoundStatement? above, SoundStatement? below, StringBuilder text)
    {
        var from = (above?.LastLine ?? 0) + 1;
        var to = below?.FirstLine ?? lines.Length + 1;
        if (lines[(from - 1)..(to - 1)].Any(line => line.Kind != LineKind.Blank))
        {
            text.Append(source.Text, StartOf(source, from), StartOf(source, to) - StartOf(source, from));
            return 1;
        }

        if (above is not null && below?.MayListUnder(above) == false)
        {
            text.Append('\n');
        }

        return 0;
    }

    private static int StartOf(SourceText source, int line) => line > source.LineCount ? source.Text.Length : source.LineSpan(line).Start;
}
