using System.Collections.Immutable;
using System.Text.RegularExpressions;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds the lines that mean the same on every statement.</summary>
internal sealed partial class InfoBinder(BindContext context)
{
    // Others speak of these: without them on a day, rules would name what is not there.
    private static readonly ImmutableArray<HeadSpec> Timeless =
        [HouseGrammar.Ruleset, VocabularyGrammar.Attribute, VocabularyGrammar.Muscle, VocabularyGrammar.Target, RuleGrammar.WorkOut];

    private static readonly ImmutableArray<HeadSpec> NotYetDated = [EvidenceGrammar.Evidence];

    /// <summary>What a statement says about itself.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="name">The name it declares; null to use the name given with <c>named</c>.</param>
    public StatementInfo Bind(StatementSyntax statement, NameSyntax? name = null)
    {
        NoteAccepted(statement);
        return new StatementInfo(statement.Spec.Words, name?.Text ?? statement.Find(Uniform.Named)?.Content.Text, statement.HeadLocation)
        {
            Because = Join(statement, Uniform.Because),
            Origin = Join(statement, Uniform.Source),
            Credence = CredenceOf(statement),
            OnlyFor = [.. statement.All(Uniform.OnlyFor).SelectMany(line => Scopes([.. line.Content], null, statement))],
            ExceptFor = [.. statement.All(Uniform.ExceptFor).SelectMany(line => Scopes([.. line.Content.Names], line.Content.Because?.Text, statement))],
            Overrides = Overrides(statement),
            Section = statement.Section,
            From = DayOf(statement, Uniform.From),
            Until = DayOf(statement, Uniform.Until),
            Amendments = context.Ledger.Of(statement),
        };
    }

    private Credence CredenceOf(StatementSyntax statement)
    {
        var beliefs = statement.Lines.Where(line => line.Spec == Uniform.Sure || line.Spec == Uniform.Probable || line.Spec == Uniform.Shaky).ToList();
        if (beliefs.Count > 1)
        {
            context.Report("SR1024", Severity.Error, $"\"{beliefs[0].Spec.Starter}\" and \"{beliefs[1].Spec.Starter}\" cannot both be meant", statement, beliefs[1].Span, "second belief",
                [new Label(statement.At(beliefs[0].Span), "first belief")], new Suggestion("keep one of them"));
        }

        return beliefs.Count == 0 ? Credence.NotSaid : beliefs[0].Spec == Uniform.Sure ? Credence.Firm : beliefs[0].Spec == Uniform.Probable ? Credence.Probable : Credence.Shaky;
    }

    private static string? Join(StatementSyntax statement, ClauseSpec<TextSyntax> spec)
    {
        var texts = statement.All(spec).Select(line => line.Content.Text).ToList();
        return texts.Count == 0 ? null : string.Join(" ", texts);
    }

    private ImmutableArray<string> Overrides(StatementSyntax statement)
    {
        var own = statement.Find(Uniform.Named)?.Content;
        var names = statement.All(Uniform.Overrides).SelectMany(line => line.Content).ToList();
        foreach (var name in names.Where(name => own is not null && name.Key == own.Key))
        {
            context.Error("SR3008", "A rule cannot override itself", statement, name.Span, "the rule's own name");
        }

        return [.. names.Where(name => context.Rules.Find(name, statement) is not null).Select(name => name.Text)];
    }

    private IEnumerable<ScopeEntry> Scopes(NameSyntax[] names, string? because, StatementSyntax statement) =>
        NamedLists.Whole(names, name => context.Targets.TryFind(name) is not null || context.Movements.TryFind(name) is not null, statement, context, out _)
            .Select(name => Scope(name, because, statement)).OfType<ScopeEntry>();

    private ScopeEntry? Scope(NameSyntax name, string? because, StatementSyntax statement)
    {
        if (context.Targets.TryFind(name.Text) is { } target)
        {
            return new ScopeEntry(target, null, because, statement.At(name.Span));
        }

        if (context.Targets.IsDoubtful(name))
        {
            return null;
        }

        return context.Movements.Find(name, statement, "here stands a target or a movement") is { } movement
            ? new ScopeEntry(null, movement, because, statement.At(name.Span))
            : null;
    }

    private DateOnly? DayOf(StatementSyntax statement, ClauseSpec<DateSyntax> spec)
    {
        if (statement.Find(spec) is not { } line)
        {
            return null;
        }

        if (Timeless.Contains(statement.Spec))
        {
            context.Error("SR3012", $"\"{statement.Spec.Words}\" holds on every day, so \"{spec.Starter}\" has no place in it", statement, line.Span, "a day",
                new Suggestion("take the line out, and put the day on the rules that it is meant for"));
            return null;
        }

        context.Dated.Add(statement.At(line.Span));
        if (NotYetDated.Contains(statement.Spec))
        {
            context.Later.Add($"dates on \"{statement.Spec.Words}\"", statement.At(line.Span));
        }

        return Dates.Check(line.Content, statement, context);
    }

    private void NoteAccepted(StatementSyntax statement)
    {
        foreach (var line in statement.All(Uniform.Accept))
        {
            if (!Code().IsMatch(line.Content.Code.Text))
            {
                context.Findings.Add(NoCode(line.Content.Code.Text, statement.At(line.Span)));
                continue;
            }

            var lines = statement.Lines.Select(each => statement.At(each.Span)).Append(statement.HeadLocation).Where(place => place.Path == statement.At(line.Span).Path).ToList();
            context.Accepted.Add(new AcceptedWarning(line.Content.Code.Text, line.Content.Because.Text, statement.At(line.Span), lines.Min(place => place.Line), lines.Max(place => place.Line)));
        }
    }

    private static Diagnostic NoCode(string said, SourceLocation place) =>
        new("SR4007", Severity.Warning, $"There is no warning \"{said}\" to accept", new Label(place, "not a code"))
        {
            Suggestions = [new Suggestion("write the code of the warning, such as SR4005, behind \"accept\"")],
        };

    [GeneratedRegex("^SR[0-9]{4}$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Code();
}
