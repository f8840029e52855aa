using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds how much a study found.</summary>
internal sealed class StudyAmounts(BindContext context)
{
    private const string Same = "about the same";
    private readonly Numbers numbers = new(context);

    /// <summary>The finding with its word and number.</summary>
    public StudyFinding With(StudyFinding finding, FindingSyntax line, StudyStrength strength, StatementSyntax statement) => line.Verdict switch
    {
        StudyVerdict.BetterThan => Worded(finding, line.Amount!.Name!.Text),
        StudyVerdict.AboutTheSame => Worded(finding, Same),
        StudyVerdict.Within or StudyVerdict.MeasuredBetter => Counted(finding, line, strength, statement),
        _ => finding,
    };

    private StudyFinding Worded(StudyFinding finding, string word) =>
        context.Words.TryFind(word) is { Unit: "points" } say ? finding with { Word = word, Amount = UncertainNumber.Certain(say.Number), Unit = "points" } : finding;

    private StudyFinding Counted(StudyFinding finding, FindingSyntax line, StudyStrength strength, StatementSyntax statement)
    {
        var value = line.Amount!.Value!;
        if (value.IsUnknown || numbers.Uncertain(value, statement) is not { } amount)
        {
            if (value.IsUnknown)
            {
                context.Error("SR3010", "What a study found is a number, and \"unknown\" is none", statement, value.Span, "unknown", new Suggestion("write the number, or \"found A is too unclear to compare with B\""));
            }

            return finding;
        }

        if (line.Verdict == StudyVerdict.Within && amount.Number < 0)
        {
            context.Error("SR3010", "How close together two sides are is a number of points, 0 or more", statement, value.Span, "below 0", new Suggestion("write for example \"within 3 points of\""));
        }
        else if (line.Verdict == StudyVerdict.MeasuredBetter && amount.Spread == 0 && strength != StudyStrength.Show)
        {
            context.Error("SR6008", "A measured difference that is weighed needs its doubt", statement, value.Span, "how far may it be off?",
                new Suggestion("add its standard error behind it, such as \"give or take 3 points\""), new Suggestion("or write \"show it\" instead"));
        }

        return finding with { Amount = amount, Unit = value.Unit };
    }
}
