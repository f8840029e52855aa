namespace ScoreRules.Benchmarks.Workloads;

/// <summary>One of the attributes by which generated movements are described.</summary>
/// <param name="Name">Its name in rule text.</param>
/// <param name="Shape">What values it takes.</param>
/// <param name="Size">How many values there are.</param>
internal sealed record WorkloadAttribute(string Name, AttributeShape Shape, int Size)
{
    /// <summary>The value of a step: half kilograms for measures, else the step itself.</summary>
    public double ValueOf(int step) => Shape == AttributeShape.Measure ? step / 2.0 : step;
}
