using System.Globalization;
using System.Text;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>Writes a rule base, and movements, as a coach would: in rule text.</summary>
internal static class RuleText
{
    /// <summary>The whole house but its movements.</summary>
    public static string Write(RuleBase rules)
    {
        var text = new StringBuilder();
        WriteHead(text, rules);
        foreach (var criterion in rules.Criteria)
        {
            var attribute = rules.Attributes[criterion.Attribute];
            Line(text, $"criterion {criterion.Name}");
            Line(text, string.Create(CultureInfo.InvariantCulture, $"  counts {criterion.Weight}"));
            Line(text, $"  reads {attribute.Name}");
            Line(text, $"  worth {string.Join(", ", criterion.Points.Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.Percent}% at {Value(attribute, point.At)}")))}");
            text.Append('\n');
        }

        foreach (var rule in rules.Rules)
        {
            WriteRule(text, rule, rules);
        }

        return text.ToString();
    }

    /// <summary>The movements of some rows.</summary>
    public static string Movements(RuleBase rules, Rows rows)
    {
        var text = new StringBuilder();
        for (var row = 0; row < rows.Count; row++)
        {
            Line(text, $"movement {rows.NameOf(row)}");
            Line(text, $"  trains {RuleBase.TargetName(rows.Targets[row])}");
            for (var i = 0; i < rules.Attributes.Length; i++)
            {
                Line(text, $"  {rules.Attributes[i].Name} is {Value(rules.Attributes[i], rows.Columns[i][row])}");
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    private static void WriteHead(StringBuilder text, RuleBase rules)
    {
        text.Append("ruleset generated\n  version 1\n\n");
        foreach (var attribute in rules.Attributes)
        {
            Line(text, $"attribute {attribute.Name}");
            Line(text, attribute.Shape switch
            {
                AttributeShape.Rating => "  rated 0 to 4",
                AttributeShape.Measure => "  in kg",
                _ => $"  one of {string.Join(", ", Enumerable.Range(0, attribute.Size).Select(word => Value(attribute, word)))}",
            });
            text.Append('\n');
        }

        text.Append("muscle generated muscle\n\n");
        for (var target = 0; target < RuleBase.TargetCount; target++)
        {
            Line(text, $"target {RuleBase.TargetName(target)}");
            text.Append("  made of generated muscle 1 parts\n");
            Line(text, $"  benchmark {RuleBase.MovementName(target, 0)}");
            text.Append('\n');
        }

        text.Append("tiers\n  Upper is from 70 points\n  Middle is from 50 points\n  Lower is the rest\n\n");
    }

    private static void WriteRule(StringBuilder text, WorkloadRule rule, RuleBase rules)
    {
        Line(text, rule.Kind switch
        {
            RuleKind.Call => $"call {RuleBase.FactName(rule.Fact)}",
            RuleKind.Give => string.Create(CultureInfo.InvariantCulture, $"give {rule.Points} points"),
            RuleKind.Take => string.Create(CultureInfo.InvariantCulture, $"take {-rule.Points} points"),
            RuleKind.Cap => "never above Middle",
            _ => "leave out",
        });
        if (rule.Kind != RuleKind.Call)
        {
            Line(text, $"  named {rule.Name}");
        }

        Line(text, $"  when {string.Join(rule.IsAny ? " or " : " and ", rule.Tests.Select(test => Test(test, rules)))}");
        Line(text, rule.Also is { } also ? $"  and {Test(also, rules)}" : null);
        Line(text, rule.Unless is { } unless ? $"  unless {Test(unless, rules)}" : null);
        Line(text, rule.OnlyTarget >= 0 ? $"  only for {RuleBase.TargetName(rule.OnlyTarget)}" : null);
        text.Append("  because it was generated\n\n");
    }

    private static string Test(WorkloadTest test, RuleBase rules) => test.Kind switch
    {
        TestKind.Called => RuleBase.FactName(test.Subject),
        TestKind.AtLeast => $"{rules.Attributes[test.Subject].Name} is at least {Value(rules.Attributes[test.Subject], test.Value)}",
        TestKind.AtMost => $"{rules.Attributes[test.Subject].Name} is at most {Value(rules.Attributes[test.Subject], test.Value)}",
        TestKind.Is => $"{rules.Attributes[test.Subject].Name} is {Value(rules.Attributes[test.Subject], test.Value)}",
        _ => $"{rules.Attributes[test.Subject].Name} is other than {Value(rules.Attributes[test.Subject], test.Value)}",
    };

    private static string Value(WorkloadAttribute attribute, double value) => attribute.Shape switch
    {
        AttributeShape.Word => $"choice-{RuleBase.Letters((int)value)}",
        AttributeShape.Measure => string.Create(CultureInfo.InvariantCulture, $"{value} kg"),
        _ => value.ToString(CultureInfo.InvariantCulture),
    };

    private static void Line(StringBuilder text, string? line)
    {
        if (line is not null)
        {
            text.Append(line).Append('\n');
        }
    }
}
