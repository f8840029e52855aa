using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Finds the day to judge for. There is no clock: it is given, or the house says on which day it was checked.</summary>
internal static class DateCheck
{
    /// <summary>The day: the one given, else that of the uppermost house.</summary>
    public static DateOnly? DayOf(DateOnly? given, IEnumerable<StatementSyntax> statements) => given
        ?? statements.Where(statement => statement.Spec == HouseGrammar.Ruleset).OrderByDescending(statement => statement.Source.Floor)
            .Select(statement => statement.Find(HouseGrammar.Checked)?.Content.Date).Select(date => date is null ? null : CalendarDay.Read(date)).FirstOrDefault();

    /// <summary>Checks the dates of changes and drops, which are gone once they had their effect.</summary>
    public static void Amendments(IEnumerable<StatementSyntax> statements, BindContext context)
    {
        foreach (var statement in statements.Where(statement => OverlayGrammar.KindOf(statement.Spec) is not null))
        {
            foreach (var line in statement.All(Uniform.From).Concat(statement.All(Uniform.Until)))
            {
                context.Dated.Add(statement.At(line.Span));
                Dates.Check(line.Content, statement, context);
            }
        }
    }

    /// <summary>Reports that dates matter and no day is known.</summary>
    public static void Missing(BindContext context)
    {
        if (context.Dated.Count > 0)
        {
            var first = context.Dated.Min(Comparer<SourceLocation>.Create(SourceLocation.Compare))!;
            context.Findings.Add(new Diagnostic("SR3011", Severity.Error, "This house has dates, and the day to judge for is not known", new Label(first, "from which day on is it judged?"))
            {
                Suggestions =
                [
                    new Suggestion("write in the ruleset on which day it was checked, such as \"checked 20 August 2031 by the head coach\""),
                    new Suggestion("or give the day: --date 2031-08-20"),
                ],
            });
        }
    }
}
