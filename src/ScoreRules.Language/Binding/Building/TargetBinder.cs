using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds targets: muscles with their shares, benchmark, parent.</summary>
internal sealed class TargetBinder(BindContext context, InfoBinder info)
{
    private readonly List<(StatementSyntax Statement, TargetDefinition Target)> bound = [];

    /// <summary>Declares all targets. Benchmarks and parents are checked later, when all names are known.</summary>
    public ImmutableArray<TargetDefinition> Bind(IEnumerable<StatementSyntax> statements)
    {
        foreach (var statement in statements.Where(statement => statement.Spec == VocabularyGrammar.Target && statement.First is not null))
        {
            var name = statement.Head<NameSyntax>();
            var benchmark = statement.Find(VocabularyGrammar.Benchmark)?.Content.Text ?? "";
            var target = new TargetDefinition(new StatementInfo("target", name.Text, statement.HeadLocation), Shares(statement), benchmark, statement.Find(VocabularyGrammar.PartOf)?.Content.Text) { Index = bound.Count };
            if (context.Targets.Declare(name, statement, target))
            {
                bound.Add((statement, target));
            }
        }

        return [.. bound.Select(pair => pair.Target)];
    }

    /// <summary>Checks names and fills in what the statements say about themselves.</summary>
    public ImmutableArray<TargetDefinition> Finish()
    {
        var finished = ImmutableArray.CreateBuilder<TargetDefinition>();
        foreach (var (statement, target) in bound)
        {
            if (statement.Find(VocabularyGrammar.Benchmark) is { } benchmark)
            {
                context.Movements.Find(benchmark.Content, statement);
            }

            CheckParent(statement);
            finished.Add(target with { Info = info.Bind(statement, statement.Head<NameSyntax>()) });
        }

        return finished.ToImmutable();
    }

    private ImmutableArray<(string Muscle, double Share)> Shares(StatementSyntax statement)
    {
        var parts = statement.Find(VocabularyGrammar.MadeOf)?.Content ?? [];
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var part in parts)
        {
            context.Muscles.Find(part.Muscle, statement);
            if (!seen.Add(part.Muscle.Key))
            {
                context.Error("SR3007", $"\"{part.Muscle.Text}\" stands twice in this list", statement, part.Muscle.Span, "second time", new Suggestion("add its parts together"));
            }

            if (part.Parts.Number <= 0)
            {
                context.Error("SR5003", "A share is more than nothing", statement, part.Parts.Span, "", new Suggestion("write a number above 0, or take the muscle out"));
            }
        }

        var total = parts.Sum(part => part.Parts.Number);
        return [.. parts.Select(part => (part.Muscle.Text, part.Parts.Number / total))];
    }

    private void CheckParent(StatementSyntax statement)
    {
        if (statement.Find(VocabularyGrammar.PartOf) is not { } part)
        {
            return;
        }

        var parent = context.Targets.Find(part.Content, statement);
        if (parent?.Parent is not null)
        {
            context.Report("SR4003", Severity.Error, "A part of a target has no parts of its own", statement, part.Content.Span, "itself a part",
                [new Label(parent.Info.Location, $"part of \"{parent.Parent}\"")], new Suggestion($"make both parts of \"{parent.Parent}\""));
        }
    }
}
