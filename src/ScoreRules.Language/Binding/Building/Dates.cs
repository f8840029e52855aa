using System.Globalization;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Days as written to days of the calendar.</summary>
internal static class Dates
{
    private static readonly string[] Months =
    [
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
    ];

    /// <summary>The day, or null when there is no such day (which is reported).</summary>
    public static DateOnly? Check(DateSyntax date, StatementSyntax statement, BindContext context)
    {
        var month = Array.FindIndex(Months, name => string.Equals(name, date.Month, StringComparison.OrdinalIgnoreCase)) + 1;
        if (month == 0)
        {
            var near = NameSuggester.Nearest(date.Month, Months);
            context.Error("SR3009", $"\"{date.Month}\" is not a month", statement, date.Span, "a day is written like 4 May 2031", [.. near.Select(name => new Suggestion($"did you mean \"{name}\"?"))]);
            return null;
        }

        var text = $"{date.Year}-{month.ToString("00", CultureInfo.InvariantCulture)}-{date.Day.PadLeft(2, '0')}";
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        context.Error("SR3009", $"There is no day {date.Day} {date.Month} {date.Year}", statement, date.Span, "", new Suggestion("write a day such as 4 May 2031"));
        return null;
    }
}
