using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>Whether a statement is in force on a day: <c>from</c> includes its day, <c>until</c> excludes it.</summary>
internal static class Validity
{
    /// <summary>Whether it is. Without a day everything is: that the day is missing is reported elsewhere.</summary>
    public static bool Covers(StatementSyntax statement, DateOnly? day) => Covers(DayOf(statement, Uniform.From), DayOf(statement, Uniform.Until), day);

    /// <summary>Whether a day lies from the first on and before the second; one that is null sets no limit.</summary>
    public static bool Covers(DateOnly? from, DateOnly? until, DateOnly? day) => day is not { } date || ((from is not { } first || first <= date) && (until is not { } end || date < end));

    private static DateOnly? DayOf(StatementSyntax statement, ClauseSpec<DateSyntax> spec) => statement.Find(spec) is { } line ? CalendarDay.Read(line.Content) : null;
}
