using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds the statements that act on movements.</summary>
internal sealed class RuleBinder(BindContext context, InfoBinder info)
{
    private readonly ConditionBinder conditions = new(context);
    private readonly Numbers numbers = new(context);

    /// <summary>Binds one statement; null when it is of another kind or a part of it was reported.</summary>
    public ConditionalStatement? Bind(StatementSyntax statement)
    {
        if (statement.First is null || !IsRule(statement.Spec))
        {
            return null;
        }

        var said = info.Bind(statement);
        var named = statement.Spec == RuleGrammar.LeaveOut ? statement.Head<NameSyntax[]>() : [];
        var condition = named.Length > 0 && !statement.Lines.Any(line => line.Spec == Reach.When || line.Spec == Reach.Unless)
            ? new Everything(statement.HeadLocation)
            : conditions.Bind(statement);
        var built = Build(statement, said, condition ?? new Everything(statement.HeadLocation));
        return condition is null ? MissingReach(statement, named) : built;
    }

    private static bool IsRule(HeadSpec spec) =>
        spec == RuleGrammar.Give || spec == RuleGrammar.Take || spec == RuleGrammar.CancelOut || spec == RuleGrammar.NeverAbove || spec == RuleGrammar.NeverBelow
        || spec == RuleGrammar.LeaveOut || spec == RuleGrammar.Caution || spec == RuleGrammar.Refuse;

    private ConditionalStatement? MissingReach(StatementSyntax statement, NameSyntax[] named)
    {
        if (statement.Spec == RuleGrammar.LeaveOut && statement.IsWhole && named.Length == 0 && !statement.Lines.Any(line => line is ClauseSyntax<ConditionLineSyntax>))
        {
            context.Report("SR1015", Severity.Error, "Nothing says which movements this is about", statement, statement.HeadLocation, "this statement", [], new Suggestion("name movements behind \"leave out\", or add a line \"when ...\""));
        }

        return null;
    }

    private ConditionalStatement? Build(StatementSyntax statement, StatementInfo said, Condition condition)
    {
        var spec = statement.Spec;
        return spec == RuleGrammar.Give || spec == RuleGrammar.Take ? Award(statement, said, condition)
            : spec == RuleGrammar.CancelOut ? CancelOut(statement, said, condition)
            : spec == RuleGrammar.NeverAbove || spec == RuleGrammar.NeverBelow ? Limit(statement, said, condition)
            : spec == RuleGrammar.LeaveOut ? Exclusion(statement, said, condition)
            : spec == RuleGrammar.Caution ? Caution(statement, said, condition)
            : new RefusalDefinition(said, condition);
    }

    private AwardDefinition? Award(StatementSyntax statement, StatementInfo said, Condition condition)
    {
        if (numbers.Points(statement.Head<OperandSyntax>(), statement) is not { } points)
        {
            return null;
        }

        if (points.Number <= 0)
        {
            context.Error("SR5003", "Points given or taken are more than nothing", statement, statement.Head<OperandSyntax>().Span, "", new Suggestion("\"give\" adds points, \"take\" takes them away; write a number above 0"));
            return null;
        }

        return new AwardDefinition(said, condition, statement.Spec == RuleGrammar.Take ? points.Negated : points);
    }

    private CancelOutDefinition? CancelOut(StatementSyntax statement, StatementInfo said, Condition condition)
    {
        var each = statement.Find(RuleGrammar.Each);
        var points = each is null ? null : numbers.Points(each.Content, statement);
        var (favour, against) = (statement.Find(RuleGrammar.InFavour), statement.Find(RuleGrammar.Against));
        return favour is null || against is null || (each is not null && points is null)
            ? null
            : new CancelOutDefinition(said, condition, favour.Content.Text, against.Content.Text, points);
    }

    private LimitDefinition? Limit(StatementSyntax statement, StatementInfo said, Condition condition)
    {
        var tier = context.Tiers.Find(statement.Head<NameSyntax>(), statement);
        return tier is null ? null : new LimitDefinition(said, condition, statement.Spec == RuleGrammar.NeverAbove, tier);
    }

    private ExclusionDefinition? Exclusion(StatementSyntax statement, StatementInfo said, Condition condition)
    {
        var names = NamedLists.Whole(statement.Head<NameSyntax[]>(), name => context.Movements.TryFind(name) is not null, statement, context, out var split);
        var movements = names.Select(name => context.Movements.Find(name, statement)).ToList();
        return split || movements.Contains(null) ? null : new ExclusionDefinition(said, condition, [.. movements!]);
    }

    private static CautionDefinition? Caution(StatementSyntax statement, StatementInfo said, Condition condition)
    {
        var severity = statement.Find(RuleGrammar.Severity)?.Content switch
        {
            "stop" => CautionSeverity.Stop,
            "high" => CautionSeverity.High,
            "medium" => CautionSeverity.Medium,
            "low" => CautionSeverity.Low,
            _ => (CautionSeverity?)null,
        };
        var place = statement.Find(RuleGrammar.Shown)?.Content switch
        {
            "above the ranking" => CautionPlace.AboveTheRanking,
            "beside the name" => CautionPlace.BesideTheName,
            "at the foot" => CautionPlace.AtTheFoot,
            _ => CautionPlace.OnTheCard,
        };
        return severity is { } known ? new CautionDefinition(said, condition, statement.Head<TextSyntax>().Text, known, place) : null;
    }
}
