using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Overlays;
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
        foreach (var statement in statements.Where(statement => statement.Spec == VocabularyGrammar.Say && statement.First is not null).OrderBy(statement => !Validity.Covers(statement, context.Day)))
        {
            if (Define(statement) is { } word && Declare(word, statement))
            {
                words.Add(word);
            }
        }

        return words.ToImmutable();
    }

    private SayDefinition? Define(StatementSyntax statement)
    {
        var say = statement.Head<SaySyntax>();
        if (!numbers.IsOneNumber(say.Value, statement))
        {
            context.Doubts.Add("say", say.Word.Text);
            return null;
        }

        if (!Kinds.Contains(say.Value.Unit, StringComparer.Ordinal))
        {
            context.Error("SR3003", "A word of the house means points, times or %", statement, say.Value.Span, say.Value.Unit is null ? "no unit" : $"in {say.Value.Unit}", new Suggestion("write for example \"at least 10 points\", \"1.5 times as important\" or \"80%\""));
            context.Doubts.Add("say", say.Word.Text);
            return null;
        }

        CheckImportance(say, statement);
        return new SayDefinition(info.Bind(statement, say.Word), say.Bound, say.Value.Number, say.Value.Unit);
    }

    // What is in force comes first. Two meanings that both have days may meet; without a day, which is reported, nobody can tell.
    private bool Declare(SayDefinition word, StatementSyntax statement)
    {
        var name = statement.Head<SaySyntax>().Word;
        if (!word.Info.IsInForce(context.Day))
        {
            context.Words.DeclareAbsent(name, statement, word, context.Day!.Value);
            return true;
        }

        var both = context.Day is null && HasDays(word) && context.Words.TryFind(name.Text) is { } other && HasDays(other);
        return !both && context.Words.Declare(name, statement, word);
    }

    private static bool HasDays(SayDefinition word) => word.Info.From is not null || word.Info.Until is not null;

    // "a little means 1.5 times" does not say of what; read aloud, the line must.
    private void CheckImportance(SaySyntax say, StatementSyntax statement)
    {
        if (say.Value.Unit == "times" && !say.IsImportance)
        {
            var gap = new Text.SourceSpan(say.Value.Span.End, 0);
            context.Error("SR3003", $"\"{say.Word.Text}\" does not say what is so many times as great", statement, gap, "here",
                new Suggestion("a word in times says how much more important a criterion is", new TextEdit(statement.At(gap), " as important"), EditSafety.Safe));
        }
        else if (say.IsImportance && say.Value.Unit != "times")
        {
            context.Error("SR3003", "How important is told in times", statement, say.Value.Span, say.Value.Unit is null ? "no unit" : $"in {say.Value.Unit}", new Suggestion("write for example \"1.5 times as important\""));
        }
    }
}
