using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds what a ruleset says about itself, and its prose.</summary>
internal sealed class HouseBinder(BindContext context, InfoBinder info)
{
    private readonly Codes codes = new(context);

    /// <summary>The house, or null when no statement says which.</summary>
    public HouseHeader? Bind(IEnumerable<StatementSyntax> statements)
    {
        var all = statements.Where(statement => statement.Spec == HouseGrammar.Ruleset && statement.First is not null).ToList();
        foreach (var second in all.Skip(1))
        {
            context.Report("SR2002", Severity.Error, "Two rulesets stand in one house", second, second.HeadLocation.Span, "second one", [new Label(all[0].HeadLocation, "first one")], new Suggestion("keep one ruleset in a folder"));
        }

        return all.Count == 0 ? null : Header(all[0]);
    }

    /// <summary>The prose of the house.</summary>
    public static ImmutableArray<PhilosophyText> Prose(IEnumerable<StatementSyntax> statements) =>
    [
        .. statements.Where(statement => statement.Spec == HouseGrammar.Philosophy).Select(statement =>
        {
            var first = (statement.First as ClauseSyntax<TextSyntax?>)?.Content?.Text;
            var lines = statement.Prose.Select(line => line.Text);
            return new PhilosophyText(statement.Section, string.Join(' ', first is null ? lines : lines.Prepend(first)), statement.HeadLocation);
        }),
    ];

    private HouseHeader Header(StatementSyntax statement)
    {
        var explains = statement.Find(HouseGrammar.ExplainsWith)?.Content;
        var checkedBy = statement.Find(HouseGrammar.Checked)?.Content;
        return new HouseHeader(info.Bind(statement, statement.Head<NameSyntax>()), statement.Find(HouseGrammar.Version)?.Content.Text ?? "")
        {
            WrittenBy = statement.Find(HouseGrammar.WrittenBy)?.Content.Text,
            CheckedOn = checkedBy is null ? null : Dates.Check(checkedBy.Date, statement, context),
            CheckedBy = checkedBy?.By.Text,
            Judges = statement.Find(HouseGrammar.Judges)?.Content.Text,
            MeantFor = statement.Find(HouseGrammar.MeantFor)?.Content.Text,
            UnsuitableFor = Unsuitable(statement),
            Judgements = statement.Find(HouseGrammar.AllowsItsAuthors) is { } allowed ? Count(allowed.Content, 0) : null,
            LetsTheReaderGuess = statement.Has(HouseGrammar.LetsTheReaderGuess),
            AcceptsEvenLoad = statement.Has(HouseGrammar.AcceptsEvenLoad),
            Reasons = Count(explains?.For, 3),
            ReasonsAgainst = Count(explains?.Against, 1),
            Person = statement.Find(HouseGrammar.Person) is { } person ? new PersonBinder(context).Bind(person, statement) : null,
        };
    }

    // A misspelt word must not take a warning away, so the list is closed where a house can describe a person.
    private ImmutableArray<string> Unsuitable(StatementSyntax statement)
    {
        NameSyntax[] names = statement.Find(HouseGrammar.UnsuitableFor)?.Content ?? [];
        if (context.Person is { } person)
        {
            codes.Of(person, names, statement);
        }

        return [.. names.Select(name => name.Text)];
    }

    private static int Count(QuantitySyntax? number, int otherwise) => number is null ? otherwise : (int)Math.Clamp(number.Number, 0, 99);
}
