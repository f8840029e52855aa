using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>
/// Checks the names of statements that have no effect yet, and lists them: choices.
/// </summary>
internal sealed class LaterBinder(BindContext context, InfoBinder info)
{
    private readonly ChoiceCheck choices = new(context);

    /// <summary>Checks all such statements.</summary>
    public void Bind(IEnumerable<StatementSyntax> statements)
    {
        foreach (var statement in statements.Where(statement => statement.First is not null && statement.Spec == QuestionGrammar.Choose))
        {
            context.Later.Add(statement.Spec.Words, statement.HeadLocation);
            info.Bind(statement);
            choices.Check(statement);
        }
    }
}
