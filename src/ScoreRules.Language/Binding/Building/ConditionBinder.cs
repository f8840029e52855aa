using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Condition lines to a condition whose names are resolved. A demand that cannot be resolved is reported and makes the whole condition null.</summary>
internal sealed class ConditionBinder(BindContext context)
{
    private readonly Numbers numbers = new(context);
    private readonly Codes codes = new(context);
    private readonly DemandAdvice advice = new(context);

    /// <summary>The condition of a statement; null when a part of it was reported or could not be read.</summary>
    public Condition? Bind(StatementSyntax statement)
    {
        if (statement.Find(Reach.Always) is { } always)
        {
            return new Everything(statement.At(always.Span));
        }

        var ways = new List<List<Condition?>>();
        var refused = new List<Condition?>();
        foreach (var line in statement.Lines.OfType<ClauseSyntax<ConditionLineSyntax>>())
        {
            var part = BindLine(line.Content, statement);
            if (line.Spec == Reach.Unless)
            {
                refused.Add(part is null ? null : new Unless(part, statement.At(line.Span)));
            }
            else if (line.Spec == Reach.When || line.Spec == Reach.OrWhen || ways.Count == 0)
            {
                ways.Add([part]);
            }
            else
            {
                ways[^1].Add(part);
            }
        }

        return Combine(ways, refused);
    }

    /// <summary>One line of demands; null when one was reported.</summary>
    public Condition? BindLine(ConditionLineSyntax line, StatementSyntax statement)
    {
        var parts = line.Atoms.Select(atom => BindAtom(atom, statement)).ToList();
        ReportRepeats(line, statement);
        if (parts.Contains(null))
        {
            return null;
        }

        var place = statement.At(line.Span);
        var sound = parts.OfType<Condition>().ToImmutableArray();
        if (!line.AnyOf)
        {
            ReportContradiction(sound, statement);
        }

        return sound.Length == 1 ? sound[0] : line.AnyOf ? new AnyOf(sound, place) : new AllOf(sound, place);
    }

    private static Condition? Combine(List<List<Condition?>> ways, List<Condition?> refused)
    {
        if (ways.Exists(way => way.Contains(null)) || refused.Contains(null) || ways.Count + refused.Count == 0)
        {
            return null;
        }

        var alternatives = ways.Select(way => Together(way)).ToImmutableArray();
        var when = alternatives.Length <= 1 ? alternatives.FirstOrDefault() : new AnyOf(alternatives, Spanning(alternatives));
        return when is null
            ? Together(refused)
            : refused.Count == 0 ? when : Together([when, .. refused]);
    }

    private static Condition Together(List<Condition?> parts)
    {
        var sound = parts.OfType<Condition>().ToImmutableArray();
        return sound.Length == 1 ? sound[0] : new AllOf(sound, Spanning(sound));
    }

    private static SourceLocation Spanning(ImmutableArray<Condition> parts) =>
        parts[0].Location with { Span = parts.Select(part => part.Location.Span).Aggregate((left, right) => left.Cover(right)) };

    private Condition? BindAtom(AtomSyntax atom, StatementSyntax statement)
    {
        if (atom.Comparison == Comparison.Called)
        {
            return BindCalled(atom, statement);
        }

        var attribute = context.Attributes.Find(atom.Subject, statement);
        if (attribute is null || !VerbFits(attribute, atom, statement))
        {
            return null;
        }

        return atom.Comparison switch
        {
            Comparison.Known or Comparison.Unknown => Test(attribute, atom, statement, double.NaN, double.NaN, []),
            _ when atom.Operands.All(operand => operand.Name is not null) => BindWords(attribute, atom, statement),
            _ => BindNumbers(attribute, atom, statement),
        };
    }

    private static AttributeTest Test(AttributeDefinition attribute, AtomSyntax atom, StatementSyntax statement, double low, double high, ImmutableArray<int> words) =>
        new(attribute, atom.Comparison, low, high, words, statement.At(atom.Span));

    private CalledTest? BindCalled(AtomSyntax atom, StatementSyntax statement)
    {
        if (advice.Report(atom.Subject, statement))
        {
            return null;
        }

        var name = context.CalledFacts.Find(atom.Subject, statement, advice.Note(atom.Subject));
        return name is null ? null : new CalledTest(name.Text, statement.At(atom.Span));
    }

    private bool VerbFits(AttributeDefinition attribute, AtomSyntax atom, StatementSyntax statement)
    {
        var isList = attribute.Kind == AttributeKind.SomeOf;
        var has = atom.Comparison is Comparison.HasAny or Comparison.HasAll or Comparison.HasNone;
        if (has == isList || atom.Comparison is Comparison.Known or Comparison.Unknown)
        {
            return true;
        }

        context.Report("SR3005", Severity.Error, isList ? $"\"{attribute.Name}\" is a list, so it is asked with \"has\"" : $"\"{attribute.Name}\" has one value, so it is asked with \"is\"",
            statement, atom.Span, $"asked with \"{(isList ? "is" : "has")}\"", [new Label(attribute.Info.Location, "declared here")], VerbRepair.For(atom.Subject.Span, atom.Operands.IsEmpty ? null : atom.Operands[0].Span, isList, statement));
        return false;
    }

    private AttributeTest? BindWords(AttributeDefinition attribute, AtomSyntax atom, StatementSyntax statement)
    {
        if (!attribute.IsWord)
        {
            var word = atom.Operands[0].Name!;
            var expected = attribute.Kind == AttributeKind.Rating ? $"a number from {Numbers.Plain(attribute.Scale.Low)} to {Numbers.Plain(attribute.Scale.High)}" : $"a number in {attribute.Unit}";
            context.Report("SR3004", Severity.Error, $"\"{attribute.Name}\" is told in numbers, not in words", statement, word.Span, $"expected {expected}", [new Label(attribute.Info.Location, "declared here")]);
            return null;
        }

        var words = codes.Of(attribute, [.. atom.Operands.Select(operand => operand.Name!)], statement);
        return words is { } sound ? Test(attribute, atom, statement, double.NaN, double.NaN, sound) : null;
    }

    private AttributeTest? BindNumbers(AttributeDefinition attribute, AtomSyntax atom, StatementSyntax statement)
    {
        var bound = atom.Operands.Select(operand => operand.Value is { } value ? numbers.Exactly(attribute, value, statement) : null).ToList();
        if (bound.Contains(null))
        {
            return null;
        }

        if (atom.Comparison is Comparison.Is or Comparison.OtherThan && attribute.Kind == AttributeKind.Measure)
        {
            context.Error("SR3006", $"\"{attribute.Name}\" is measured, so it is never exactly a number", statement, atom.Span, "asks for exactly this number",
                new Suggestion("ask \"is at least\", \"is at most\", \"is more than\", \"is less than\" or \"is between ... and ...\""));
            return null;
        }

        var high = bound[^1]!.Value;
        if (atom.Comparison == Comparison.Between && bound[0] > high)
        {
            context.Error("SR4001", "This can never be true: the low end is above the high end", statement, atom.Span, "low end first", new Suggestion("exchange the two numbers"));
            return null;
        }

        return Test(attribute, atom, statement, bound[0]!.Value, high, []);
    }

    private void ReportRepeats(ConditionLineSyntax line, StatementSyntax statement)
    {
        for (var i = 1; i < line.Atoms.Length; i++)
        {
            var (atom, place) = (line.Atoms[i], statement.Source.Slice(line.Atoms[i].Span));
            var before = line.Atoms.Take(i).FirstOrDefault(earlier => NameText.Same(statement.Source.Slice(earlier.Span), place));
            if (before is not null)
            {
                context.Report("SR3007", Severity.Error, $"\"{place}\" stands twice on this line", statement, atom.Span, "second time", [new Label(statement.At(before.Span), "first time")], new Suggestion("take one of them out"));
            }
        }
    }

    // One movement has one grip: "grip is pronated and grip is supinated" can never hold.
    private void ReportContradiction(ImmutableArray<Condition> parts, StatementSyntax statement)
    {
        var wanted = parts.OfType<AttributeTest>().Where(test => test.Comparison == Comparison.Is && test.Attribute.Kind == AttributeKind.OneOf).ToList();
        foreach (var pair in wanted.GroupBy(test => test.Attribute.Index).Select(group => group.ToList()).Where(group => group.Count > 1 && group[0].Codes[0] != group[1].Codes[0]))
        {
            context.Report("SR4001", Severity.Error, $"This can never be true: one movement has one {pair[0].Attribute.Name}", statement, pair[1].Location, "and also this",
                [new Label(pair[0].Location, "this")], new Suggestion($"write \"{pair[0].Attribute.Name} is one of ...\", or put \"or\" between the two"));
        }
    }
}
