using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Statistics.Draws;

namespace ScoreRules.Certainty;

/// <summary>The statements of a house that its authors may be wrong in, with the chance that each is right.</summary>
internal sealed class Admitted
{
    // Each doubtful call doubles the inferences that may be needed.
    private const int MostCalls = 6;

    private readonly ImmutableArray<(BoundStatement Statement, double Chance)> doubtful;
    private readonly Dictionary<BoundStatement, int> places;

    private Admitted(ImmutableArray<(BoundStatement Statement, double Chance)> doubtful, ImmutableArray<CallDefinition> takenAsSure)
    {
        this.doubtful = doubtful;
        TakenAsSure = takenAsSure;
        places = doubtful.Select((entry, place) => (entry.Statement, place)).ToDictionary(pair => pair.Statement, pair => pair.place, (IEqualityComparer<BoundStatement>)ReferenceEqualityComparer.Instance);
    }

    /// <summary>How many.</summary>
    public int Count => doubtful.Length;

    /// <summary>Doubtful ways to a called fact beyond the number that is tried; they are taken as sure, and that is said.</summary>
    public ImmutableArray<CallDefinition> TakenAsSure { get; }

    /// <summary>The doubtful ways to called facts that are tried.</summary>
    public IEnumerable<CallDefinition> Calls => doubtful.Select(entry => entry.Statement).OfType<CallDefinition>();

    /// <summary>Finds them: criteria, calls, points, limits and judgements with a belief that the house gives a chance below 1.</summary>
    public static Admitted In(BoundRuleset ruleset)
    {
        var all = ruleset.Criteria.Concat<BoundStatement>(ruleset.Calls).Concat(ruleset.Awards).Concat(ruleset.Limits).Concat(ruleset.Places)
            .Select(statement => (Statement: statement, Chance: PrincipleStudies.Update(Stated(statement, ruleset), statement, ruleset))).Where(entry => entry.Chance < 1)
            .OrderBy(entry => entry.Statement.Info.Location, Comparer<SourceLocation>.Create(SourceLocation.Compare)).ToList();
        var calls = all.Select(entry => entry.Statement).OfType<CallDefinition>().Skip(MostCalls).ToImmutableArray();
        return new Admitted([.. all.Where(entry => !calls.Contains(entry.Statement))], calls);
    }

    /// <summary>Draws which of them are right.</summary>
    public void Draw(Generator generator, Span<bool> right)
    {
        for (var i = 0; i < doubtful.Length; i++)
        {
            right[i] = generator.NextUniform() < doubtful[i].Chance;
        }
    }

    /// <summary>The place of a statement among them; -1 for one that is sure.</summary>
    public int PlaceOf(BoundStatement statement) => places.GetValueOrDefault(statement, -1);

    /// <summary>The chance that its author gives a statement, 0 to 1.</summary>
    public static double Stated(BoundStatement statement, BoundRuleset ruleset) => Chance(statement.Info.Credence, ruleset);

    // Silence counts as sure; so does a word that the house gave no number.
    private static double Chance(Credence credence, BoundRuleset ruleset) => credence switch
    {
        Credence.Firm => Word("we are sure", ruleset),
        Credence.Probable => Word("we think so", ruleset),
        Credence.Shaky => Word("we may be wrong", ruleset),
        _ => 1,
    };

    private static double Word(string word, BoundRuleset ruleset) => ruleset.Word(word) is { } share ? Math.Clamp(share / 100, 0, 1) : 1;
}
