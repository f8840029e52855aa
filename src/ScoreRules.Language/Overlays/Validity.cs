using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>Whether a statement is in force on a day: <c>from</c> includes its day, <c>until</c> excludes it.</summary>
internal static class Validity
{
    /// <summary>Whether it is. Without a day everything is: that the day is missing is reported elsewhere.</summary>
    public static bool Covers(StatementSyntax statement, DateOnly? day) =>
        day is not { } date || (statement.Find(Uniform.From) is not { } from || CalendarDay.Read(from.Content) is not { } first || first <= date)
            && (statement.Find(Uniform.Until) is not { } until || CalendarDay.Read(until.Content) is not { } end || date < end);
}
