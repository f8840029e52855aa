using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>Turns rule text and rows into a bound ruleset: rules through the reader, movements as a spreadsheet brings them.</summary>
internal static class BoundHouse
{
    /// <summary>Binds; throws when anything is found wrong, since then something else than the rules would be measured.</summary>
    public static BoundRuleset Bind(RuleBase rules, Rows rows) => Bind(RuleText.Write(rules), rules, rows);

    /// <summary>Binds an edited text.</summary>
    public static BoundRuleset Bind(string text, RuleBase rules, Rows rows)
    {
        var reader = RulesetReader.Read([new SourceText("house.rules", text)]);
        var ruleset = reader.Bind(Declarations(reader, rules, rows));
        var wrong = reader.Findings.ToSorted().FirstOrDefault(finding => finding.Severity == Severity.Error);
        return wrong is null ? ruleset : throw new InvalidOperationException($"The generated house is wrong: {wrong.Code} {wrong.Headline}");
    }

    /// <summary>One movement of some rows.</summary>
    public static MovementDeclaration Declaration(ImmutableArray<AttributeDefinition> attributes, ImmutableArray<TargetDefinition> targets, Rows rows, int row)
    {
        var place = new SourceText("movements.csv", "").At(new SourceSpan(0, 0));
        return new MovementDeclaration(new StatementInfo("row", rows.NameOf(row), place))
        {
            Trains = [targets[rows.Targets[row]]],
            Facts = [.. rows.Columns.Select((column, index) => new StatedFact(attributes[index], Value(attributes[index], column[row]), IsBut: false, IsGuess: false, place))],
        };
    }

    private static List<MovementDeclaration> Declarations(RulesetReader reader, RuleBase rules, Rows rows)
    {
        var attributes = rules.Attributes.Select(attribute => reader.Attributes.First(found => found.Name == attribute.Name)).ToImmutableArray();
        var targets = Enumerable.Range(0, RuleBase.TargetCount).Select(target => reader.Targets.First(found => found.Name == RuleBase.TargetName(target))).ToImmutableArray();
        return [.. Enumerable.Range(0, rows.Count).Select(row => Declaration(attributes, targets, rows, row))];
    }

    private static FactValue Value(AttributeDefinition attribute, double value) => attribute.IsWord ? FactValue.Of([(int)value]) : FactValue.Of(value);
}
