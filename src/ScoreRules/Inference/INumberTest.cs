using System.Runtime.Intrinsics;

namespace ScoreRules.Inference;

/// <summary>A comparison of numbers, as a type, so that the loop over all rows is compiled once for each comparison.</summary>
internal interface INumberTest
{
    /// <summary>Where it holds, as all bits of a lane; nowhere for an unknown number, that is NaN.</summary>
    static abstract Vector256<double> Holds(Vector256<double> number, Vector256<double> low, Vector256<double> high);
}
