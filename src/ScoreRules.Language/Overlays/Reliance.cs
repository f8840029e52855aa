using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Overlays;

/// <summary>Which statements are about safety, and which called facts and recipes they rely on, directly or over others.</summary>
internal sealed class Reliance
{
    private readonly ILookup<string, StatementSyntax> makers;
    private readonly HashSet<string> aboutThePerson;
    private readonly Dictionary<string, StatementSyntax> reliedOn = new(StringComparer.Ordinal);
    private readonly Dictionary<string, StatementSyntax> named = new(StringComparer.Ordinal);

    /// <summary>Looks through statements.</summary>
    public Reliance(IReadOnlyCollection<StatementSyntax> statements)
    {
        makers = statements.Where(statement => statement.First is not null && (statement.Spec == RuleGrammar.Call || statement.Spec == RuleGrammar.WorkOut))
            .ToLookup(statement => statement.Head<NameSyntax>().Key, StringComparer.Ordinal);
        aboutThePerson = statements.Where(statement => statement.Spec == VocabularyGrammar.Attribute && statement.First is not null && statement.Has(VocabularyGrammar.AboutThePerson))
            .Select(statement => statement.Head<NameSyntax>().Key).Append("audience").ToHashSet(StringComparer.Ordinal);
        foreach (var safety in statements.Where(statement => statement.Spec == RuleGrammar.Caution || IsSafety(statement)).OrderBy(statement => statement.Spec != RuleGrammar.Caution))
        {
            if (safety.Find(Uniform.Named) is { } own)
            {
                named.TryAdd(own.Content.Key, safety);
            }

            foreach (var name in Used(safety).Where(name => makers.Contains(name)))
            {
                reliedOn.TryAdd(name, safety);
            }
        }
    }

    /// <summary>Whether a statement caps or leaves out by what a person is: then it may only be tightened.</summary>
    public bool IsSafety(StatementSyntax statement) =>
        statement.First is not null && (statement.Spec == RuleGrammar.NeverAbove || statement.Spec == RuleGrammar.LeaveOut) && Used(statement).Any(aboutThePerson.Contains);

    /// <summary>The caution or safety rule of a name; null when there is none.</summary>
    public StatementSyntax? Named(string key) => named.GetValueOrDefault(key);

    /// <summary>The caution or safety rule that relies on a call or recipe; null when none does.</summary>
    public StatementSyntax? ReliesOn(StatementSyntax maker) =>
        maker.First is ClauseSyntax<NameSyntax> name && (maker.Spec == RuleGrammar.Call || maker.Spec == RuleGrammar.WorkOut) ? reliedOn.GetValueOrDefault(name.Content.Key) : null;

    private HashSet<string> Used(StatementSyntax statement)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var next = new Stack<StatementSyntax>([statement]);
        while (next.TryPop(out var at))
        {
            foreach (var name in NamesIn(at).Where(seen.Add))
            {
                foreach (var maker in makers[name])
                {
                    next.Push(maker);
                }
            }
        }

        return seen;
    }

    private static IEnumerable<string> NamesIn(StatementSyntax statement) =>
        statement.Lines.OfType<ClauseSyntax<ConditionLineSyntax>>().SelectMany(line => line.Content.Atoms).Select(atom => atom.Subject.Key)
            .Concat(statement.Lines.OfType<ClauseSyntax<StepSyntax>>().Select(step => step.Content.Operand.Name?.Key).OfType<string>());
}
