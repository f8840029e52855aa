using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Answers a comparison for all rows at once. Total: an unknown value gives "cannot be told", nothing throws.</summary>
internal static class AttributeKernel
{
    /// <summary>The answer for all rows.</summary>
    public static ThreeValuedSet Evaluate(AttributeTest test, FactTable facts)
    {
        var known = facts.Known(test.Attribute);
        if (test.Comparison is Comparison.Known or Comparison.Unknown)
        {
            return ThreeValuedSet.Exactly(test.Comparison == Comparison.Known ? known : known.Complement());
        }

        var holds = test.Attribute.IsWord ? Words(test, facts) : Numbers(test, facts);
        var certain = holds.And(known);
        return new ThreeValuedSet(certain, certain.Or(known.Complement()));
    }

    private static RowSet Words(AttributeTest test, FactTable facts)
    {
        var sets = test.Codes.Select(code => facts.WithWord(test.Attribute, code)).ToList();
        var any = sets.Aggregate(RowSet.None(facts.RowCount), (all, one) => all.Or(one));
        return test.Comparison switch
        {
            Comparison.OtherThan or Comparison.NoneOf or Comparison.HasNone => any.Complement(),
            Comparison.AtLeast or Comparison.AtMost or Comparison.MoreThan or Comparison.LessThan or Comparison.Between => RowSet.None(facts.RowCount),
            Comparison.HasAll => sets.Aggregate(RowSet.All(facts.RowCount), (all, one) => all.And(one)),
            _ => any,
        };
    }

    // Numbers are compared after rounding to 1e-9, so that the last bit of a sum never decides.
    private static RowSet Numbers(AttributeTest test, FactTable facts)
    {
        var column = facts.Numbers(test.Attribute);
        var (low, high) = (Rounded(test.Number), Rounded(test.High));
        return test.Comparison switch
        {
            Comparison.NoneOf or Comparison.HasNone => RowSet.All(column.Length),
            Comparison.OneOf or Comparison.HasAny or Comparison.HasAll => RowSet.None(column.Length),
            Comparison.Is => RowSet.Where(column.Length, row => Rounded(column[row]) == low),
            Comparison.OtherThan => RowSet.Where(column.Length, row => Rounded(column[row]) != low),
            Comparison.AtLeast => RowSet.Where(column.Length, row => Rounded(column[row]) >= low),
            Comparison.AtMost => RowSet.Where(column.Length, row => Rounded(column[row]) <= low),
            Comparison.MoreThan => RowSet.Where(column.Length, row => Rounded(column[row]) > low),
            Comparison.LessThan => RowSet.Where(column.Length, row => Rounded(column[row]) < low),
            _ => RowSet.Where(column.Length, row => Rounded(column[row]) >= low && Rounded(column[row]) <= high),
        };
    }

    private static double Rounded(double value) => Math.Round(value, 9, MidpointRounding.AwayFromZero);
}
