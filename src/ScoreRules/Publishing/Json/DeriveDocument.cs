using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What mechanics derives for one movement and one target, as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Ruleset">The house.</param>
/// <param name="Inputs">Every file read, with its fingerprint.</param>
/// <param name="Movement">The movement.</param>
/// <param name="Target">The target.</param>
/// <param name="Cautions">Cautions of the movement, most serious first.</param>
/// <param name="Method">Which free body is cut out; null when too little is stated.</param>
/// <param name="Joint">The working joint's motion; null when too little is stated.</param>
/// <param name="Person">Whose body; null when too little is stated.</param>
/// <param name="Used">Each number used, with its origin.</param>
/// <param name="Assumptions">What the method takes for granted.</param>
/// <param name="Facts">The facts: of the target as a whole, then of single muscles.</param>
/// <param name="Curve">Load and lengths over the range; null when too little is stated.</param>
/// <param name="Helps">Where the load helps instead of opposing.</param>
/// <param name="Rated">Ratings beside derived values.</param>
/// <param name="Missing">What is missing, and what stating it would give.</param>
public sealed record DeriveDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    RulesetPart? Ruleset,
    ImmutableArray<InputPart> Inputs,
    string Movement,
    string Target,
    ImmutableArray<CautionPart> Cautions,
    string? Method,
    string? Joint,
    PersonPart? Person,
    ImmutableArray<UsedPart> Used,
    ImmutableArray<string> Assumptions,
    ImmutableArray<DerivedFactPart> Facts,
    CurvePart? Curve,
    ImmutableArray<SpanPart> Helps,
    ImmutableArray<RatedPart> Rated,
    ImmutableArray<MissingPart> Missing);
