using System.Collections.Immutable;
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
        if (test.Comparison is Comparison.Known or Comparison.Unknown)
        {
            var asked = facts.Known(test.Attribute);
            return ThreeValuedSet.Exactly(test.Comparison == Comparison.Known ? asked : asked.Complement());
        }

        return test.Attribute.IsWord ? Words(test, facts) : Numbers(test, facts.NumberColumn(test.Attribute));
    }

    private static ThreeValuedSet Words(AttributeTest test, FactTable facts)
    {
        var column = facts.WordColumn(test.Attribute);
        var holds = test.Comparison switch
        {
            Comparison.OtherThan or Comparison.NoneOf or Comparison.HasNone => Any(test.Codes, column, facts.RowCount).Complement(),
            Comparison.HasAll => All(test.Codes, column, facts.RowCount),
            _ => Any(test.Codes, column, facts.RowCount),
        };
        return Where(holds, column.Known, column.IsComplete);
    }

    private static RowSet Any(ImmutableArray<int> codes, WordColumn column, int rowCount)
    {
        var any = codes.IsEmpty ? RowSet.None(rowCount) : column.With(codes[0]);
        for (var i = 1; i < codes.Length; i++)
        {
            any = any.Or(column.With(codes[i]));
        }

        return any;
    }

    private static RowSet All(ImmutableArray<int> codes, WordColumn column, int rowCount)
    {
        var all = codes.IsEmpty ? RowSet.All(rowCount) : column.With(codes[0]);
        for (var i = 1; i < codes.Length; i++)
        {
            all = all.And(column.With(codes[i]));
        }

        return all;
    }

    private static ThreeValuedSet Numbers(AttributeTest test, NumberColumn column)
    {
        var (low, high) = (NumberColumn.AsCompared(test.Number), NumberColumn.AsCompared(test.High));
        var holds = test.Comparison switch
        {
            Comparison.Is => NumberKernel.Where<NumberTests.Is>(column.Compared, low, high),
            Comparison.OtherThan => NumberKernel.Where<NumberTests.Is>(column.Compared, low, high).Complement(),
            Comparison.AtLeast => NumberKernel.Where<NumberTests.AtLeast>(column.Compared, low, high),
            Comparison.AtMost => NumberKernel.Where<NumberTests.AtMost>(column.Compared, low, high),
            Comparison.MoreThan => NumberKernel.Where<NumberTests.MoreThan>(column.Compared, low, high),
            Comparison.LessThan => NumberKernel.Where<NumberTests.LessThan>(column.Compared, low, high),
            _ => NumberKernel.Where<NumberTests.Between>(column.Compared, low, high),
        };
        return Where(holds, column.Known, column.IsComplete);
    }

    private static ThreeValuedSet Where(RowSet holds, RowSet known, bool isComplete)
    {
        if (isComplete)
        {
            return ThreeValuedSet.Exactly(holds);
        }

        var certain = holds.And(known);
        return new ThreeValuedSet(certain, certain.Or(known.Complement()));
    }
}
