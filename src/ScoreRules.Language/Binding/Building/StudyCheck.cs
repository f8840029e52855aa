using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Checks studies: the names in them, and whether their lines go together.</summary>
internal sealed class StudyCheck(BindContext context)
{
    private readonly Codes codes = new(context);
    private readonly StudyWords words = new(context);
    private readonly StudyLines lines = new(context);

    /// <summary>Reports names that are declared nowhere, studies that compare something with itself, and lines that contradict one another.</summary>
    public void Check(StatementSyntax statement)
    {
        var level = statement.Find(EvidenceGrammar.Compares)?.Content;
        if (level is { Level: "amounts of", Of: { } criterion })
        {
            context.Criteria.Find(criterion, statement);
        }

        if (statement.Find(EvidenceGrammar.Outcome) is { } outcome && context.KnowsOutcomes)
        {
            context.Outcomes.Find(outcome.Content, statement, "only the outcome that the house judges moves a placement; name the others on the line \"ignores\" of the evidence");
        }

        foreach (var withdrawn in statement.All(EvidenceGrammar.Withdrawn))
        {
            CheckWithdrawal(withdrawn, statement);
        }

        var findings = statement.All(EvidenceGrammar.Found).Concat(statement.All(EvidenceGrammar.Measured)).Select(line => line.Content).ToList();
        var known = true;
        foreach (var finding in findings)
        {
            known &= CheckSides(level, finding, statement);
            words.Check(finding, statement);
            foreach (var region in finding.Regions.Where(region => context.Targets.TryFind(region.Text) is null && !context.Targets.IsDoubtful(region)))
            {
                context.Muscles.Find(region, statement, "a study's regions are muscles or targets");
            }
        }

        lines.Check(known ? findings : [], statement);
    }

    // What is taken back counts until that day, so the day to judge for matters.
    private void CheckWithdrawal(ClauseSyntax<(DateSyntax Date, TextSyntax? Because)> line, StatementSyntax statement)
    {
        context.Dated.Add(statement.At(line.Span));
        var from = statement.Find(Uniform.From)?.Content;
        if (Dates.Check(line.Content.Date, statement, context) is { } end && from is not null && Syntax.CalendarDay.Read(from) is { } begin && begin >= end)
        {
            context.Report("SR6009", Severity.Error, "This study counts only from a day on which it had been taken back", statement, line.Content.Date.Span, "taken back", [new Label(statement.At(from.Span), "counts from here")],
                new Suggestion("mend one of the two days"));
        }
    }

    private void CheckAmounts(FindingSyntax finding, StatementSyntax statement)
    {
        foreach (var (side, word) in new[] { (finding.First, "more"), (finding.Second, "less") }.Where(pair => pair.Item1.Key is not ("more" or "less")))
        {
            context.Error("SR3001", $"A study of amounts compares \"more\" with \"less\", and \"{side.Text}\" is neither", statement, side.Span, "", new Suggestion($"write \"{word}\", if it is meant", new TextEdit(statement.At(side.Span), word)));
        }
    }

    // Whether both names are known: only then can lines be held against one another.
    private bool CheckSides(ComparesSyntax? level, FindingSyntax finding, StatementSyntax statement)
    {
        if (finding.First.Key == finding.Second.Key)
        {
            context.Error("SR3008", "A study compares something with itself", statement, finding.Second.Span, "the same name", new Suggestion("name the other side"));
        }

        if (level?.Level == "movements")
        {
            return context.Movements.Find(finding.First, statement) is not null & context.Movements.Find(finding.Second, statement) is not null;
        }

        if (level is { Level: "classes of", Of: { } name } && context.Attributes.Find(name, statement) is { IsWord: true } attribute)
        {
            codes.Of(attribute, [finding.First, finding.Second], statement);
        }

        else if (level is { Level: "amounts of" })
        {
            CheckAmounts(finding, statement);
        }

        return true;
    }
}
