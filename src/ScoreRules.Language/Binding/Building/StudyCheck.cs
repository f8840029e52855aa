using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Checks the names in studies.</summary>
internal sealed class StudyCheck(BindContext context)
{
    private readonly Codes codes = new(context);

    /// <summary>Reports names that are declared nowhere, and studies that compare something with itself.</summary>
    public void Check(StatementSyntax statement)
    {
        var level = statement.Find(EvidenceGrammar.Compares)?.Content;
        if (level is { Level: "amounts of", Of: { } criterion })
        {
            context.Criteria.Find(criterion, statement);
        }

        foreach (var finding in statement.All(EvidenceGrammar.Found).Concat(statement.All(EvidenceGrammar.Measured)).Select(line => line.Content))
        {
            if (finding.First.Key == finding.Second.Key)
            {
                context.Error("SR3008", "A study compares something with itself", statement, finding.Second.Span, "the same name", new Suggestion("name the other side"));
            }

            CheckSides(level, finding, statement);

            if (finding.Verdict == StudyVerdict.BetterThan)
            {
                context.Words.Find(finding.Amount!.Name!, statement, $"how much better is a word of the house, such as \"say {finding.Amount!.Name!.Text} means at least 10 points\"");
            }

            foreach (var region in finding.Regions.Where(region => context.Targets.TryFind(region.Text) is null && !context.Targets.IsDoubtful(region)))
            {
                context.Muscles.Find(region, statement, "a study's regions are muscles or targets");
            }
        }
    }

    private void CheckSides(ComparesSyntax? level, FindingSyntax finding, StatementSyntax statement)
    {
        if (level?.Level == "movements")
        {
            context.Movements.Find(finding.First, statement);
            context.Movements.Find(finding.Second, statement);
        }
        else if (level is { Level: "classes of", Of: { } name } && context.Attributes.Find(name, statement) is { IsWord: true } attribute)
        {
            codes.Of(attribute, [finding.First, finding.Second], statement);
        }
    }
}
