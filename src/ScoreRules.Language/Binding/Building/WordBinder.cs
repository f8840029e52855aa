using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds the words of the house.</summary>
internal sealed class WordBinder(BindContext context, InfoBinder info)
{
    private static readonly string[] Kinds = ["points", "times", "%"];

    private readonly Numbers numbers = new(context);

    /// <summary>All words.</summary>
    public ImmutableArray<SayDefinition> Bind(IEnumerable<StatementSyntax> statements)
    {
        var words = ImmutableArray.CreateBuilder<SayDefinition>();
        foreach (var statement in statements.Where(statement => statement.Spec == VocabularyGrammar.Say && statement.First is not null))
        {
            var say = statement.Head<SaySyntax>();
            if (!numbers.IsOneNumber(say.Value, statement))
            {
                context.Doubts.Add("say", say.Word.Text);
                continue;
            }

            if (!Kinds.Contains(say.Value.Unit, StringComparer.Ordinal))
            {
                context.Error("SR3003", "A word of the house means points, times or %", statement, say.Value.Span, say.Value.Unit is null ? "no unit" : $"in {say.Value.Unit}", new Suggestion("write for example \"at least 10 points\", \"1.5 times\" or \"80%\""));
                context.Doubts.Add("say", say.Word.Text);
                continue;
            }

            var definition = new SayDefinition(info.Bind(statement, say.Word), say.Bound, say.Value.Number, say.Value.Unit);
            if (context.Words.Declare(say.Word, statement, definition))
            {
                words.Add(definition);
            }
        }

        return words.ToImmutable();
    }
}
