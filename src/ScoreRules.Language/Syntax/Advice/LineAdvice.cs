using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Words what is wrong with a line that did not parse: the special cases first, the general sentence last.</summary>
internal sealed class LineAdvice(SourceText source)
{
    private static readonly ImmutableArray<Func<AdviceDraft, FailedLine, Diagnostic?>> Cases =
    [
        NegationAdvice.Find, WordAdvice.Find, OpenerAdvice.Find, QuoteAdvice.Find, ScaleAdvice.Find, MeasuredAdvice.Find, ClaimAdvice.Find, VerbAdvice.Find, UnitAdvice.Find, ListAdvice.Find, ConditionAdvice.Find,
        StrengthAdvice.Find, MisspeltAdvice.Find, CommaAdvice.Find, NameAdvice.Find, GeneralAdvice.Missing, GeneralAdvice.DoesNotFit,
    ];

    /// <summary>The finding for a line.</summary>
    public Diagnostic For(FailedLine line)
    {
        var draft = new AdviceDraft(source, line);
        foreach (var find in Cases)
        {
            if (find(draft, line) is { } diagnostic)
            {
                return diagnostic;
            }
        }

        throw new InvalidOperationException("The general sentence fits every line.");
    }
}
