namespace ScoreRules.Statistics.Draws;

/// <summary>One draw, common to all things that are ranked: the weights, and the score of each thing under them. The same object is filled again for the next draw.</summary>
public sealed class Draw
{
    private readonly int[] order;
    private readonly double[] keys;
    private bool ordered;

    /// <summary>Makes room for a draw.</summary>
    /// <param name="things">How many things are ranked, 1 or more.</param>
    /// <param name="weights">How many weights, 0 or more.</param>
    /// <exception cref="StatisticsInputException">Nothing to rank.</exception>
    public Draw(int things, int weights)
    {
        Scores = new double[Require.AtLeast(things, 1, "The number of things to rank")];
        Weights = new double[Require.AtLeast(weights, 0, "The number of weights")];
        order = new int[things];
        keys = new double[things];
    }

    /// <summary>The weights of this draw, in shares of 1.</summary>
    public double[] Weights { get; }

    /// <summary>The score of each thing, higher is better.</summary>
    public double[] Scores { get; }

    /// <summary>Says that the scores are those of a new draw.</summary>
    public void Renew() => ordered = false;

    /// <summary>The places of the things, the best first; equal scores stand together in no stated order.</summary>
    public ReadOnlySpan<int> BestFirst
    {
        get
        {
            if (!ordered)
            {
                for (var i = 0; i < order.Length; i++)
                {
                    (order[i], keys[i]) = (i, -Scores[i]);
                }

                Array.Sort(keys, order);
                ordered = true;
            }

            return order;
        }
    }
}
