using System.Numerics;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Scoring;

/// <summary>What a criterion's worth function gives each row; NaN where the criterion does not count or nothing can be said.</summary>
/// <param name="criterion">The criterion.</param>
/// <param name="facts">The facts.</param>
internal sealed class CriterionWorth(CriterionDefinition criterion, FactTable facts)
{
    private readonly double unknown = criterion.UnknownWorth ?? double.NaN;

    /// <summary>The worths, by row.</summary>
    /// <param name="attributes">The attribute read, by target index; null where the criterion does not count.</param>
    public double[] Column(AttributeDefinition?[] attributes)
    {
        var worth = new double[facts.RowCount];
        for (var start = 0; start < worth.Length;)
        {
            var end = EndOfTarget(start);
            Fill(worth.AsSpan(start, end - start), start, attributes[facts.TargetOfRow[start]]);
            start = end;
        }

        LeaveOutSkipped(worth);
        return worth;
    }

    // Rows of one target stand together.
    private int EndOfTarget(int start)
    {
        var end = start + 1;
        while (end < facts.RowCount && facts.TargetOfRow[end] == facts.TargetOfRow[start])
        {
            end++;
        }

        return end;
    }

    private void Fill(Span<double> worth, int start, AttributeDefinition? attribute)
    {
        if (attribute is null)
        {
            worth.Fill(double.NaN);
        }
        else if (attribute.IsWord)
        {
            FillWords(worth, start, attribute);
        }
        else
        {
            FillNumbers(worth, facts.Numbers(attribute).Numbers[start..]);
            if (attribute.IsDerived)
            {
                HoldAssumed(worth, start, attribute);
            }
        }
    }

    // An even load that is only assumed never beats a computed curve of the same target.
    private void HoldAssumed(Span<double> worth, int start, AttributeDefinition attribute)
    {
        var best = double.NaN;
        for (var i = 0; i < worth.Length; i++)
        {
            var fact = facts.Fact(start + i, attribute);
            best = fact is { Origin: FactOrigin.Derived, Value.IsKnown: true } && !(worth[i] <= best) ? worth[i] : best;
        }

        for (var i = 0; i < worth.Length; i++)
        {
            worth[i] = worth[i] > best && facts.Fact(start + i, attribute).Origin == FactOrigin.DerivedOnAssumption ? best : worth[i];
        }
    }

    private void FillNumbers(Span<double> worth, ReadOnlySpan<double> numbers)
    {
        for (var i = 0; i < worth.Length; i++)
        {
            worth[i] = double.IsNaN(numbers[i]) ? unknown : WorthCurve.At(criterion.Worth, numbers[i]);
        }
    }

    private void FillWords(Span<double> worth, int start, AttributeDefinition attribute)
    {
        worth.Fill(unknown);
        var words = facts.Words(attribute);
        for (var code = 0; code < attribute.Values.Length; code++)
        {
            var of = WorthCurve.OfCode(criterion.Worth, code);
            if (!double.IsNaN(of))
            {
                FillWord(worth, start, words.Having(code).Words, of);
            }
        }
    }

    // Looks only at the bits of the rows to be filled.
    private static void FillWord(Span<double> worth, int start, ReadOnlySpan<ulong> having, double of)
    {
        var end = start + worth.Length;
        for (var i = start >> 6; i << 6 < end; i++)
        {
            for (var word = having[i]; word != 0; word &= word - 1)
            {
                var row = (i << 6) + BitOperations.TrailingZeroCount(word);
                if (row >= start && row < end)
                {
                    worth[row - start] = of;
                }
            }
        }
    }

    // A movement that the criterion skips is carried by its other criteria.
    private void LeaveOutSkipped(double[] worth)
    {
        foreach (var row in criterion.Info.ExceptFor.Where(entry => entry.Movement is not null).SelectMany(entry => RowsOf(entry.Movement!)))
        {
            worth[row] = double.NaN;
        }

        var only = criterion.Info.OnlyFor.Where(entry => entry.Movement is not null).SelectMany(entry => RowsOf(entry.Movement!)).ToHashSet();
        if (!criterion.Info.OnlyFor.Any(entry => entry.Movement is not null))
        {
            return;
        }

        for (var row = 0; row < worth.Length; row++)
        {
            worth[row] = only.Contains(row) ? worth[row] : double.NaN;
        }
    }

    private IEnumerable<int> RowsOf(string movement)
    {
        var key = NameText.Key(movement);
        return facts.Rows.Where(row => NameText.Key(row.Movement.Name) == key).Select(row => row.Index);
    }
}
