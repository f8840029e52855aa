using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Checks the names in choices.</summary>
internal sealed class ChoiceCheck(BindContext context)
{
    private readonly ConditionBinder conditions = new(context);
    private readonly Numbers numbers = new(context);

    /// <summary>Reports names that are declared nowhere.</summary>
    public void Check(StatementSyntax statement)
    {
        foreach (var target in statement.Head<(QuantitySyntax Count, NameSyntax[] Targets)>().Targets)
        {
            context.Targets.Find(target, statement);
        }

        foreach (var profile in statement.All(QuestionGrammar.UsingProfile))
        {
            context.Profiles.Find(profile.Content, statement);
        }

        foreach (var fact in statement.All(QuestionGrammar.Cover).SelectMany(line => line.Content))
        {
            context.CalledFacts.Find(fact, statement);
        }

        foreach (var line in statement.All(QuestionGrammar.Include))
        {
            conditions.BindLine(line.Content.Line, statement);
        }

        foreach (var total in statement.All(QuestionGrammar.Total))
        {
            if (context.Attributes.Find(total.Content.Attribute, statement) is { } attribute)
            {
                numbers.Exactly(attribute, total.Content.Limit, statement);
            }
        }

        foreach (var name in statement.All(QuestionGrammar.NoTwoDifferOnlyBy).SelectMany(line => line.Content))
        {
            context.Attributes.Find(name, statement);
        }

        foreach (var line in statement.Lines.OfType<ClauseSyntax<ConditionLineSyntax>>())
        {
            conditions.BindLine(line.Content, statement);
        }
    }
}
