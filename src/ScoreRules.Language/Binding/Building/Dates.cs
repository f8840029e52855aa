using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Checks that days as written are days of the calendar.</summary>
internal static class Dates
{
    /// <summary>The day, or null when there is no such day (which is reported).</summary>
    public static DateOnly? Check(DateSyntax date, StatementSyntax statement, BindContext context)
    {
        if (CalendarDay.MonthOf(date) == 0)
        {
            var near = NameSuggester.Nearest(date.Month, CalendarDay.Months);
            context.Error("SR3009", $"\"{date.Month}\" is not a month", statement, date.Span, "a day is written like 4 May 2031", near.IsEmpty ? [new Suggestion("write the month by its English name, such as May")] : [.. near.Select(name => new Suggestion($"did you mean \"{name}\"?"))]);
            return null;
        }

        if (CalendarDay.Read(date) is { } day)
        {
            return day;
        }

        context.Error("SR3009", $"There is no day {date.Day} {date.Month} {date.Year}", statement, date.Span, "", new Suggestion("write a day such as 4 May 2031"));
        return null;
    }
}
