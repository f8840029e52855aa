using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

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
            Fill(worth.AsSpan(start, end - start), start, attributes[facts.Targets[start]]);
            start = end;
        }

        LeaveOutSkipped(worth);
        return worth;
    }

    // Rows of one target stand together.
    private int EndOfTarget(int start)
    {
        var end = start + 1;
        while (end < facts.RowCount && facts.Targets[end] == facts.Targets[start])
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
            FillWords(worth, facts.WordColumn(attribute).FirstCodes.AsSpan(start));
        }
        else
        {
            FillNumbers(worth, facts.Numbers(attribute).AsSpan(start));
        }
    }

    private void FillNumbers(Span<double> worth, ReadOnlySpan<double> numbers)
    {
        for (var i = 0; i < worth.Length; i++)
        {
            worth[i] = double.IsNaN(numbers[i]) ? unknown : WorthCurve.At(criterion.Worth, numbers[i]);
        }
    }

    private void FillWords(Span<double> worth, ReadOnlySpan<int> codes)
    {
        for (var i = 0; i < worth.Length; i++)
        {
            var of = codes[i] == WordColumn.NotKnown ? double.NaN : WorthCurve.OfCode(criterion.Worth, codes[i]);
            worth[i] = double.IsNaN(of) ? unknown : of;
        }
    }

    // A movement that the criterion skips is carried by its other criteria.
    private void LeaveOutSkipped(double[] worth)
    {
        foreach (var row in criterion.Info.ExceptFor.Where(entry => entry.Movement is not null).SelectMany(entry => facts.RowsOf(entry.Movement!)))
        {
            worth[row] = double.NaN;
        }

        var only = criterion.Info.OnlyFor.Where(entry => entry.Movement is not null).SelectMany(entry => facts.RowsOf(entry.Movement!)).ToHashSet();
        if (!criterion.Info.OnlyFor.Any(entry => entry.Movement is not null))
        {
            return;
        }

        for (var row = 0; row < worth.Length; row++)
        {
            worth[row] = only.Contains(row) ? worth[row] : double.NaN;
        }
    }
}
