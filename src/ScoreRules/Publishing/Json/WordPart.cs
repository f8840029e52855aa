using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A word that a house's text may use.</summary>
/// <param name="Kind">attribute, derived fact, kit, muscle, target, tier, word, called fact or movement.</param>
/// <param name="Name">The word as declared.</param>
/// <param name="Meaning">What it takes or stands for.</param>
/// <param name="Description">One line that says more.</param>
/// <param name="Values">Words it allows, or muscles it is made of.</param>
/// <param name="Steps">What the steps of a rating mean.</param>
/// <param name="AlsoKnownAs">Other names.</param>
/// <param name="File">File that declares it.</param>
/// <param name="Line">Line that declares it.</param>
public sealed record WordPart(
    string Kind,
    string Name,
    string Meaning,
    string? Description,
    ImmutableArray<string> Values,
    ImmutableArray<StepPart> Steps,
    ImmutableArray<string> AlsoKnownAs,
    string? File,
    int? Line);
