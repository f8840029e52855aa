namespace ScoreRules.Fuzzing.Targets;

/// <summary>Something that must hold for every input does not hold.</summary>
internal sealed class BrokenPromiseException(string message) : Exception(message);
