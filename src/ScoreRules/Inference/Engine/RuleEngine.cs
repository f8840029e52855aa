using System.Collections.Immutable;
using NRules;

namespace ScoreRules.Inference.Engine;

/// <summary>The rules of a ruleset, compiled by NRules; may be run over many tables, also by several threads.</summary>
internal sealed class RuleEngine
{
    private readonly ImmutableArray<EngineRule> rules;
    private readonly ISessionFactory factory;

    /// <summary>Compiles rules.</summary>
    public RuleEngine(ImmutableArray<EngineRule> rules)
    {
        this.rules = rules;
        try
        {
            var compiler = new RuleCompiler { ExpressionCompiler = new ShapeCompiler() };
            factory = compiler.Compile(rules.Select((rule, position) => RuleTranslation.Translate(rule, NameOf(position))));
        }
        catch (RuleCompilationException fault)
        {
            throw Faulty(fault.RuleName, fault);
        }
    }

    /// <summary>Puts facts into working memory and fires until no rule has anything left to do.</summary>
    /// <returns>All derived facts, and the number of firings.</returns>
    public (ImmutableArray<DerivedFact> Derived, int Firings) Run(RankingFacts ranking, IEnumerable<DerivedFact> given)
    {
        try
        {
            var session = factory.CreateSession();
            session.Insert(ranking);
            session.InsertAll(given);

            // One firing more than there are rules would mean that one fires twice: stop there rather than for ever.
            var firings = session.Fire(rules.Length + 1);
            return firings == rules.Length
                ? ([.. session.Query<DerivedFact>()], firings)
                : throw new InferenceException(FormattableString.Invariant($"{firings} firings of {rules.Length} rules: each must fire once."));
        }
        catch (RuleRhsExpressionEvaluationException fault)
        {
            throw Faulty(fault.RuleName, fault.InnerException ?? fault);
        }
        catch (RuleExecutionException fault)
        {
            throw new InferenceException(fault.Message, fault);
        }
    }

    // Authors may leave rules without a name or give two the same; the position tells them apart.
    private string NameOf(int position) => FormattableString.Invariant($"{position}: {InferenceException.NameOf(rules[position].Statement.Info)}");

    private InferenceException Faulty(string name, Exception cause)
    {
        var position = Enumerable.Range(0, rules.Length).FirstOrDefault(position => NameOf(position) == name, -1);
        return position < 0 ? new InferenceException(cause.Message, cause) : InferenceException.InRule(rules[position].Statement.Info, cause);
    }
}
