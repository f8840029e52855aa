namespace ScoreRules.Publishing.Json;

/// <summary>What one study did to one movement.</summary>
/// <param name="Study">The study.</param>
/// <param name="Points">Points up or down.</param>
/// <param name="Tested">Whether it speaks of the movement itself, and not of a cousin.</param>
/// <param name="Sense">How it speaks: at least, measured, or within.</param>
/// <param name="First">The side it speaks of first.</param>
/// <param name="Second">The other side.</param>
/// <param name="Low">Least difference of first less second, in points; null when open.</param>
/// <param name="High">Largest difference; null when open.</param>
/// <param name="Deviation">How far it may be off, one standard deviation in points.</param>
/// <param name="Text">The same in words.</param>
/// <param name="Rule">The statement.</param>
public sealed record PullPart(string Study, double Points, bool Tested, string Sense, string First, string Second, double? Low, double? High, double Deviation, string Text, RulePart Rule);
