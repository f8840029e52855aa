using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Whether published editions are what their rules say, as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Editions">The editions.</param>
/// <param name="ListFaults">What is wrong with the pages that list them.</param>
public sealed record VerifyDocument(int SchemaVersion, string Tool, string Notice, ImmutableArray<VerifiedPart> Editions, ImmutableArray<string> ListFaults);
