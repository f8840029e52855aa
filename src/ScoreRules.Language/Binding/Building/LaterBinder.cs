using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>
/// Checks the names of statements that have no effect yet, and lists them: choices and questions.
/// </summary>
internal sealed class LaterBinder(BindContext context, InfoBinder info)
{
    private readonly ConditionBinder conditions = new(context);
    private readonly Codes codes = new(context);
    private readonly ChoiceCheck choices = new(context);

    /// <summary>Checks all such statements.</summary>
    public void Bind(IEnumerable<StatementSyntax> statements)
    {
        foreach (var statement in statements.Where(statement => statement.First is not null && HasNoEffect(statement.Spec)))
        {
            context.Later.Add(statement.Spec.Words, statement.HeadLocation);
            info.Bind(statement);
            Check(statement);
        }
    }

    private static bool HasNoEffect(HeadSpec spec) =>
        spec == QuestionGrammar.Choose || spec.Words.StartsWith("ask ", StringComparison.Ordinal);

    private void Check(StatementSyntax statement)
    {
        if (statement.Spec == QuestionGrammar.Choose)
        {
            choices.Check(statement);
        }
        else
        {
            CheckQuestion(statement);
        }
    }

    private void CheckQuestion(StatementSyntax statement)
    {
        if (statement.Spec == QuestionGrammar.AskWhy)
        {
            Movements(statement.Head<NameSyntax[]>(), statement);
        }
        else if (statement.Spec == QuestionGrammar.AskWhatIsLost && context.Attributes.TryFind("equipment") is { } equipment)
        {
            codes.Of(equipment, statement.Head<NameSyntax[]>(), statement);
        }
        else if (statement.Spec == QuestionGrammar.AskWhatLifts || statement.Spec == QuestionGrammar.AskWhere)
        {
            Movements([statement.Head<NameSyntax>()], statement);
            foreach (var tier in statement.All(QuestionGrammar.ToTier))
            {
                context.Tiers.Find(tier.Content, statement);
            }
        }
        else
        {
            CheckConditions(statement);
        }
    }

    private void CheckConditions(StatementSyntax statement)
    {
        foreach (var line in statement.Lines.OfType<ClauseSyntax<ConditionLineSyntax>>())
        {
            conditions.BindLine(line.Content, statement);
        }
    }

    private void Movements(IEnumerable<NameSyntax> names, StatementSyntax statement)
    {
        foreach (var name in names)
        {
            context.Movements.Find(name, statement);
        }
    }
}
