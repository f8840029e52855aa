using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Checks that a study's words of strength are defined, and defined as what they are used for.</summary>
internal sealed class StudyWords(BindContext context)
{
    private const string Same = "about the same";
    private readonly Numbers numbers = new(context);

    /// <summary>Reports words that are not defined, or that mean another kind of thing.</summary>
    public void Check(FindingSyntax finding, StatementSyntax statement)
    {
        if (finding.Verdict == StudyVerdict.BetterThan)
        {
            var name = finding.Amount!.Name!;
            var word = context.Words.Find(name, statement, $"how much better is a word of the house, such as \"say {name.Text} means at least 10 points\"");
            Expect(word, SayBound.AtLeast, "at least 10 points", name, statement);
        }
        else if (finding.Verdict == StudyVerdict.AboutTheSame)
        {
            CheckSame(finding, statement);
        }
        else if (finding.Amount?.Value is { } amount && numbers.HasOneUnit(amount, statement))
        {
            CheckUnit(amount, finding.Verdict == StudyVerdict.Within ? ["points"] : ["points", "sd", "%"], statement);
        }
    }

    private void CheckUnit(ValueSyntax amount, string[] units, StatementSyntax statement)
    {
        if (!units.Contains(amount.Unit, StringComparer.Ordinal))
        {
            context.Error("SR3003", $"What a study found is told in {string.Join(", ", units)}", statement, amount.Span, amount.Unit is null ? "no unit" : $"in {amount.Unit}", new Suggestion($"write the unit behind the number, such as \"3 {units[0]}\""));
        }
    }

    private void CheckSame(FindingSyntax finding, StatementSyntax statement)
    {
        if (context.Words.TryFind(Same) is { } word)
        {
            Expect(word, SayBound.Within, "within 3 points", finding.Second, statement);
        }
        else if (context.Doubts.IsNew(Same) && !context.Words.IsDoubtful(new NameSyntax(Same, finding.Second.Span)))
        {
            context.Error("SR2012", $"\"{Same}\" is not a word this house has defined with \"say\"", statement, finding.Second.Span, "about the same as this", new Suggestion($"add \"say {Same} means within 3 points\", with your number"));
        }
    }

    private void Expect(SayDefinition? word, SayBound bound, string example, NameSyntax place, StatementSyntax statement)
    {
        if (word is not null && (word.Bound != bound || word.Unit != "points") && context.ReportedWords.Add(("say", word.Info.Name!)))
        {
            context.Report("SR6006", Severity.Error, $"\"{word.Info.Name}\" is not defined as something a study can find", statement, place.Span, "used here", [new Label(word.Info.Location, "defined here")],
                new Suggestion($"define it as for example \"say {word.Info.Name} means {example}\""));
        }
    }
}
