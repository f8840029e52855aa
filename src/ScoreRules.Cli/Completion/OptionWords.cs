using System.Collections.Immutable;

namespace ScoreRules.Cli.Completion;

/// <summary>An option as a shell completes it.</summary>
/// <param name="Name">Its name with the dashes.</param>
/// <param name="Description">What it does.</param>
/// <param name="TakesValue">Whether a value follows.</param>
/// <param name="Values">The values it knows; empty where any value goes.</param>
internal sealed record OptionWords(string Name, string Description, bool TakesValue, ImmutableArray<string> Values);
