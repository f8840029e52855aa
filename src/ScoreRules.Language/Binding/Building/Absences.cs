using System.Globalization;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Findings about what is needed on the day to judge for and is not in force then.</summary>
internal static class Absences
{
    /// <summary>A statement that is in force uses something that is not.</summary>
    public static Diagnostic Used(NameSyntax name, StatementSyntax statement, SourceLocation declared, DateOnly day) =>
        new("SR3013", Severity.Error, $"\"{name.Text}\" is not in force on {Written(day)}", new Label(statement.At(name.Span), "used here"))
        {
            Within = BindContext.TitleOf(statement),
            Section = statement.Section,
            Others = [new Label(declared, "declared here, for other days")],
            Suggestions = [new Suggestion("give this statement the same days, or say what holds on that day")],
        };

    /// <summary>None of a house's tiers is in force.</summary>
    public static Diagnostic NoTiers(SourceLocation declared, DateOnly day) =>
        new("SR3013", Severity.Error, $"No tiers are in force on {Written(day)}", new Label(declared, "for other days"))
        {
            Suggestions = [new Suggestion("add tiers for that day, or let these begin earlier or end later")],
        };

    /// <summary>A day as it is written in rule text.</summary>
    public static string Written(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
