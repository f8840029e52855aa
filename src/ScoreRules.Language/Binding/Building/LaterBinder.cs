using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>
/// Checks the names of statements that have no effect yet, and lists them: studies, evidence
/// and choices.
/// </summary>
internal sealed class LaterBinder(BindContext context, InfoBinder info)
{
    private readonly ConditionBinder conditions = new(context);
    private readonly StudyCheck studies = new(context);
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
        spec == EvidenceGrammar.Evidence || spec == EvidenceGrammar.Study
        || spec == QuestionGrammar.Choose;

    private void Check(StatementSyntax statement)
    {
        if (statement.Spec == EvidenceGrammar.Study)
        {
            studies.Check(statement);
        }
        else if (statement.Spec == QuestionGrammar.Choose)
        {
            choices.Check(statement);
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
}
