namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>One muscle over the steps of a movement.</summary>
/// <param name="Lengths">Practical length at each step, 0 to 1.</param>
/// <param name="IsLongAtStart">Whether it is longer in the first third than in the last; also when it does not change.</param>
internal sealed record MuscleSweep(double[] Lengths, bool IsLongAtStart);
