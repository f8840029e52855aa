using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds attributes and muscles, and declares the attributes that recipes make.</summary>
internal sealed class VocabularyBinder(BindContext context, InfoBinder info)
{
    /// <summary>Name of the attribute that the program computes: likeness between a movement and its target's benchmark, in %.</summary>
    public const string LikenessName = "likeness to the benchmark";

    private static readonly ImmutableArray<Syntax.Tree.ClauseSpec> Kinds = VocabularyGrammar.Attribute.OneOf;
    private readonly List<AttributeDefinition> attributes = [];

    /// <summary>All attributes, indexes in order.</summary>
    public ImmutableArray<AttributeDefinition> Bind(IReadOnlyList<StatementSyntax> statements)
    {
        var muscles = statements.Where(statement => statement.Spec == VocabularyGrammar.Muscle && statement.First is not null).Select(BindMuscle).ToList();
        foreach (var statement in statements.Where(statement => statement.Spec == VocabularyGrammar.Attribute && statement.First is not null))
        {
            if (HasUnit(statement) & Kinds.Any(statement.Has))
            {
                Declare(statement, statement.Head<NameSyntax>(), BindAttribute(statement, muscles));
            }
            else
            {
                DoubtNames(statement);
            }
        }

        foreach (var statement in statements.Where(statement => statement.Spec == RuleGrammar.WorkOut && statement.First is not null))
        {
            var name = statement.Head<NameSyntax>();
            if (!HasUnit(statement) || LacksUnit(statement) || (!statement.IsWhole && UnitOf(statement) is null))
            {
                DoubtNames(statement);
                continue;
            }

            Declare(statement, name, new AttributeDefinition(new StatementInfo("work out", name.Text, statement.HeadLocation), AttributeKind.Measure) { Unit = UnitOf(statement) ?? "times", IsWorkedOut = true });
        }

        AddLikeness();
        AddDerived();
        return [.. attributes];
    }

    // Without "in", a recipe counts in times; numbers with a unit show that the line is forgotten, which is one fault and not one for each step.
    private bool LacksUnit(StatementSyntax statement)
    {
        var measured = RuleGrammar.Steps.SelectMany(statement.All).OrderBy(step => step.Span.Start)
            .Select(step => step.Content.Operand.Value).FirstOrDefault(value => value?.Unit is not (null or "times" or "repetitions"));
        if (measured is null || UnitOf(statement) is not null || !statement.IsWhole)
        {
            return false;
        }

        context.Error("SR5008", $"{statement.Spec.Words} \"{statement.Head<NameSyntax>().Text}\" does not say in which unit it counts", statement, measured.Span, $"in {measured.Unit}", new Suggestion($"add a line \"in {measured.Unit}\" below it"));
        return true;
    }

    // What kind of thing it is could not be read, which has been reported; any use of it would be judged wrongly.
    private void DoubtNames(StatementSyntax statement) => context.Doubts.Add(statement.Spec.Words, statement.Head<NameSyntax>().Text);

    private static string? UnitOf(StatementSyntax statement) =>
        statement.Find(VocabularyGrammar.InUnit) is { } unit ? Units.Canonical(unit.Content.Text) : null;

    private string BindMuscle(StatementSyntax statement)
    {
        var name = statement.Head<NameSyntax>();
        var crosses = statement.Find(VocabularyGrammar.Crosses)?.Content ?? [];
        var muscle = new MuscleDefinition(info.Bind(statement, name), statement.Find(VocabularyGrammar.Latin)?.Content.Text, [.. crosses.Select(joint => joint.Text)]);
        context.Muscles.Declare(name, statement, muscle);
        foreach (var synonym in statement.All(VocabularyGrammar.AlsoKnownAs).SelectMany(line => line.Content))
        {
            context.Muscles.Hint(synonym.Text, name.Text);
        }

        return name.Text;
    }

    private AttributeDefinition BindAttribute(StatementSyntax statement, List<string> muscles)
    {
        var name = statement.Head<NameSyntax>();
        var (kind, values) = KindOf(statement, muscles);
        var scale = statement.Find(VocabularyGrammar.Rated)?.Content;
        return new AttributeDefinition(info.Bind(statement, name), kind)
        {
            Unit = UnitOf(statement),
            Scale = scale is { } rated ? (rated.Low.Number, rated.High.Number) : default,
            Values = values,
            Anchors = [.. statement.All(VocabularyGrammar.Anchor).Select(line => (line.Content.Step.Number, line.Content.Text.Text))],
            Description = statement.Find(VocabularyGrammar.DescribedAs)?.Content.Text,
            Synonyms = [.. statement.All(VocabularyGrammar.AlsoKnownAs).SelectMany(line => line.Content).Select(synonym => synonym.Text)],
            CountsForLikeness = statement.Has(VocabularyGrammar.CountsForLikeness),
            IsAboutThePerson = statement.Has(VocabularyGrammar.AboutThePerson),
        };
    }

    private (AttributeKind Kind, ImmutableArray<string> Values) KindOf(StatementSyntax statement, List<string> muscles)
    {
        if (statement.Find(VocabularyGrammar.OneOf) is { } oneOf)
        {
            return (AttributeKind.OneOf, Distinct(oneOf.Content, statement));
        }

        if (statement.Find(VocabularyGrammar.SomeOf) is { } someOf)
        {
            if (MeansMuscles(someOf.Content, statement))
            {
                return (AttributeKind.SomeOf, [.. muscles]);
            }

            return (AttributeKind.SomeOf, Distinct(someOf.Content, statement));
        }

        if (statement.Has(VocabularyGrammar.SomeOfTheMuscles))
        {
            return (AttributeKind.SomeOf, [.. muscles]);
        }

        return statement.Has(VocabularyGrammar.YesOrNo) ? (AttributeKind.OneOf, ["yes", "no"])
            : statement.Has(VocabularyGrammar.Rated) ? (AttributeKind.Rating, [])
            : (AttributeKind.Measure, []);
    }

    // "some of muscles" would declare a list with one word in it.
    private bool MeansMuscles(NameSyntax[] names, StatementSyntax statement)
    {
        if (names is not [{ } only] || !(only.Key.StartsWith("the ", StringComparison.Ordinal) || only.Key == "the" || only.Key.EndsWith("muscles", StringComparison.Ordinal)))
        {
            return false;
        }

        context.Error("SR1002", $"\"{only.Text}\" does not fit here", statement, only.Span, "expected \"the muscles\"", new Suggestion("did you mean \"some of the muscles\"?", new TextEdit(statement.At(only.Span), "the muscles"), EditSafety.Safe));
        return true;
    }

    private ImmutableArray<string> Distinct(NameSyntax[] names, StatementSyntax statement)
    {
        var seen = new Dictionary<string, NameSyntax>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!seen.TryAdd(name.Key, name))
            {
                context.Report("SR3007", Severity.Error, $"\"{name.Text}\" stands twice in this list", statement, name.Span, "second time", [new Label(statement.At(seen[name.Key].Span), "first time")], new Suggestion("take one of them out"));
            }
        }

        return [.. seen.Values.Select(name => name.Text)];
    }

    // A unit that is none is reported here, and nothing more is said where the attribute is used.
    private bool HasUnit(StatementSyntax statement)
    {
        if (statement.Find(VocabularyGrammar.InUnit)?.Content is not { } unit || unit.Text is "%" or "°" || Units.IsUnit(unit.Text))
        {
            return true;
        }

        var meant = UnitSynonyms.Find(unit.Text);
        context.Error("SR3003", $"\"{unit.Text}\" is not a unit", statement, unit.Span, "", meant is null
            ? new Suggestion($"units are: {string.Join(", ", Units.Printed)}")
            : new Suggestion($"did you mean \"{meant}\"?", new TextEdit(statement.At(unit.Span), meant), EditSafety.Safe));
        return false;
    }

    private void Declare(StatementSyntax statement, NameSyntax name, AttributeDefinition attribute)
    {
        attribute = attribute with { Index = attributes.Count };
        if (context.Attributes.Declare(name, statement, attribute))
        {
            attributes.Add(attribute);
            foreach (var synonym in attribute.Synonyms)
            {
                context.Attributes.Hint(synonym, attribute.Name);
            }
        }
    }

    private void AddLikeness() =>
        AddBuiltIn(LikenessName, "%", "how alike a movement and its target's benchmark are, 100% for the benchmark itself; worked out by the program", isDerived: false);

    // A house may have a word of its own for something; its word stands.
    private void AddDerived()
    {
        foreach (var (name, unit, description) in DerivedAttributes.All.Where(derived => context.Attributes.TryFind(derived.Name) is null))
        {
            AddBuiltIn(name, unit, description, isDerived: true);
        }
    }

    private void AddBuiltIn(string name, string unit, string description, bool isDerived)
    {
        var source = new SourceText("(built in)", $"attribute {name}\n  in {unit}\n");
        var place = source.At(source.LineSpan(1));
        var attribute = new AttributeDefinition(new StatementInfo("attribute", name, place), AttributeKind.Measure)
        {
            Index = attributes.Count,
            Unit = unit,
            IsWorkedOut = true,
            IsDerived = isDerived,
            Description = description,
        };
        context.Attributes.Add(name, place, attribute);
        attributes.Add(attribute);
    }
}
