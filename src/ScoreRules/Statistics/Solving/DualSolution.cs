namespace ScoreRules.Statistics.Solving;

/// <summary>What the dual method found.</summary>
/// <param name="Multipliers">One for each row; 0 for a row that plays no part.</param>
/// <param name="Active">The rows that hold as equalities, in the order of the factor.</param>
/// <param name="Factor">The Cholesky factor of the matrix over those rows.</param>
internal sealed record DualSolution(double[] Multipliers, IReadOnlyList<int> Active, GrowingFactor Factor);
