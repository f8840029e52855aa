using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Change;

/// <summary>
/// The single changes worth supposing: every step of a rating; of a measure the numbers where a rule or a worth bends; every word of a
/// closed list; of several words each that a rule names or that is there, taken away or added.
/// </summary>
internal sealed class ChangeCandidates(ReadAttributes read, Movement movement, TargetDefinition target)
{
    // A hair beyond a number that is asked for with "more than" or "less than", as a share of it.
    private const double Beyond = 0.01;

    /// <summary>All of them, by attribute, the smallest first.</summary>
    public ImmutableArray<FactChange> All() => [.. read.All.SelectMany(attribute => Of(attribute).OrderBy(change => change.Size))];

    private IEnumerable<FactChange> Of(AttributeDefinition attribute)
    {
        var fact = movement.TargetFacts.Of(attribute.Index, target) ?? movement.Facts[attribute.Index];
        var values = attribute.Kind switch
        {
            AttributeKind.Rating => Steps(attribute).Where(step => step != fact.Value.Number).Select(FactValue.Of),
            AttributeKind.Measure => Numbers(attribute).Where(number => number != fact.Value.Number).Select(FactValue.Of),
            AttributeKind.OneOf => Enumerable.Range(0, attribute.Values.Length).Where(code => !fact.Value.Codes.Contains(code)).Select(code => FactValue.Of([code])),
            _ => Lists(attribute, fact.Value).Select(FactValue.Of),
        };
        return values.Select(value => new FactChange(attribute, fact, value));
    }

    private static IEnumerable<double> Steps(AttributeDefinition attribute)
    {
        for (var step = Math.Ceiling(attribute.Scale.Low); step <= attribute.Scale.High; step++)
        {
            yield return step;
        }
    }

    private IEnumerable<double> Numbers(AttributeDefinition attribute)
    {
        var bends = read.Criteria(attribute).SelectMany(criterion => criterion.Worth.Points).Select(point => point.At);
        var asked = read.Tests(attribute).SelectMany(Ends);
        return bends.Concat(asked).Where(double.IsFinite).Distinct().Order();
    }

    private static IEnumerable<double> Ends(AttributeTest test) => test.Comparison switch
    {
        Comparison.MoreThan => [test.Number + (Math.Abs(test.Number) * Beyond)],
        Comparison.LessThan => [test.Number - (Math.Abs(test.Number) * Beyond)],
        Comparison.Between => [test.Number, test.High],
        Comparison.AtLeast or Comparison.AtMost => [test.Number, test.Number + (Math.Abs(test.Number) * Beyond), test.Number - (Math.Abs(test.Number) * Beyond)],
        _ => [],
    };

    private IEnumerable<ImmutableArray<int>> Lists(AttributeDefinition attribute, FactValue now)
    {
        var tests = read.Tests(attribute).Select(test => test.Codes).ToList();
        var named = tests.SelectMany(codes => codes).Concat(read.Criteria(attribute).SelectMany(Worthy)).Concat(now.Codes).Distinct();
        var moves = named.Select(code => (ImmutableArray<int>)[code]).Concat(tests.Where(codes => codes.Length > 1));
        return moves.SelectMany(codes => new[] { Added(now.Codes, codes), Taken(now.Codes, codes) })
            .Where(list => !now.IsKnown || !list.SequenceEqual(now.Codes)).DistinctBy(list => string.Join(',', list), StringComparer.Ordinal);
    }

    private static IEnumerable<int> Worthy(CriterionDefinition criterion) =>
        criterion.Worth.ByCode.Select((worth, code) => (worth, code)).Where(pair => !double.IsNaN(pair.worth)).Select(pair => pair.code);

    private static ImmutableArray<int> Added(ImmutableArray<int> codes, ImmutableArray<int> more) => [.. codes.Union(more).Order()];

    private static ImmutableArray<int> Taken(ImmutableArray<int> codes, ImmutableArray<int> away) => [.. codes.Except(away)];
}
