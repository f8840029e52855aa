namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>A place on a length surface.</summary>
/// <param name="X">First angle, degrees.</param>
/// <param name="Y">Second angle, degrees; 0 where there is only one.</param>
/// <param name="First">How far the first angle wanted was outside.</param>
/// <param name="Second">How far the second angle wanted was outside.</param>
internal readonly record struct Placement(double X, double Y, Excess First, Excess Second);
