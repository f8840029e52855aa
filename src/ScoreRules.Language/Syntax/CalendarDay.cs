using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Language.Syntax.Nodes;

namespace ScoreRules.Language.Syntax;

/// <summary>Days as written to days of the calendar.</summary>
internal static class CalendarDay
{
    /// <summary>Names of the months, January first.</summary>
    public static readonly ImmutableArray<string> Months =
    [
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
    ];

    /// <summary>The month of a day as written, from 1; 0 when its name is no month.</summary>
    public static int MonthOf(DateSyntax date) => Months.IndexOf(date.Month, StringComparer.OrdinalIgnoreCase) + 1;

    /// <summary>The day, or null when the calendar has no such day.</summary>
    public static DateOnly? Read(DateSyntax date)
    {
        var text = $"{date.Year}-{MonthOf(date).ToString("00", CultureInfo.InvariantCulture)}-{date.Day.PadLeft(2, '0')}";
        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
    }
}
