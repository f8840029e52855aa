using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Answers one test for all rows at once. Answers every test, a senseless one with "does not hold"; never throws.</summary>
internal static class AttributeKernel
{
    /// <summary>The rows where a test holds, does not hold or cannot be told.</summary>
    public static ThreeValuedSet Test(FactTable facts, AttributeTest test)
    {
        var known = facts.Known(test.Attribute);
        return test.Comparison switch
        {
            Comparison.Known => ThreeValuedSet.Decided(known),
            Comparison.Unknown => ThreeValuedSet.Decided(known.Not()),
            _ => ThreeValuedSet.WhereKnown(test.Attribute.IsWord ? Words(facts, test) : Numbers(facts, test), known),
        };
    }

    private static RowSet Words(FactTable facts, AttributeTest test)
    {
        var column = facts.Words(test.Attribute);
        return test.Comparison switch
        {
            Comparison.Is or Comparison.OneOf or Comparison.HasAny => column.HavingAny(test.Codes),
            Comparison.OtherThan or Comparison.NoneOf or Comparison.HasNone => column.Known.AndNot(column.HavingAny(test.Codes)),
            Comparison.HasAll => column.HavingAll(test.Codes),
            _ => RowSet.None(facts.RowCount),
        };
    }

    private static RowSet Numbers(FactTable facts, AttributeTest test)
    {
        var column = facts.Numbers(test.Attribute);
        var inside = NumberRange.Of(test.Comparison, test.Number, test.High).RowsOf(column);
        return test.Comparison is Comparison.OtherThan or Comparison.NoneOf or Comparison.HasNone ? column.Known.AndNot(inside) : inside;
    }
}
