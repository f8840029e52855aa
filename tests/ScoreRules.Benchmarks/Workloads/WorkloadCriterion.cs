using System.Collections.Immutable;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>A generated criterion.</summary>
/// <param name="Name">Its name; names rise in the order of the criteria.</param>
/// <param name="Attribute">Index of the attribute it reads.</param>
/// <param name="Weight">Its weight.</param>
/// <param name="Points">Worth in whole percent at values, rising by value; for words one for each.</param>
internal sealed record WorkloadCriterion(string Name, int Attribute, double Weight, ImmutableArray<(double At, int Percent)> Points);
