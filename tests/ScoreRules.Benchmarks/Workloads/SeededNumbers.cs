namespace ScoreRules.Benchmarks.Workloads;

/// <summary>Numbers that look random and are the same on every run and machine: SplitMix64 (Steele, Lea, Flood 2014, public domain).</summary>
/// <param name="seed">Where the sequence begins.</param>
internal sealed class SeededNumbers(ulong seed)
{
    private ulong state = seed;

    /// <summary>A whole number from 0 to just under the limit.</summary>
    public int Below(int limit) => (int)((Next() >> 33) % (ulong)limit);

    /// <summary>Yes, so many times in a hundred.</summary>
    public bool Chance(int percent) => Below(100) < percent;

    private ulong Next()
    {
        state += 0x9E3779B97F4A7C15;
        var mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }
}
