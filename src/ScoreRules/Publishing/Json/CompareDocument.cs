using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What differs between two houses, as JSON.</summary>
/// <param name="SchemaVersion">Version of this form.</param>
/// <param name="Tool">Version of the program.</param>
/// <param name="Notice">The line that stands in every form of output.</param>
/// <param name="Old">The old house.</param>
/// <param name="OldInputs">Every file read for it, with its fingerprint.</param>
/// <param name="New">The new house.</param>
/// <param name="NewInputs">Every file read for it, with its fingerprint.</param>
/// <param name="Cautions">Cautions that were lost, added or are shown elsewhere; losses first.</param>
/// <param name="Changes">Rules and facts that differ in what they do.</param>
/// <param name="RenamedTiers">Tiers with another name at the same place.</param>
/// <param name="GoneTargets">Lists that only the old house has.</param>
/// <param name="NewTargets">Lists that only the new house has.</param>
/// <param name="Targets">The lists of both.</param>
public sealed record CompareDocument(
    int SchemaVersion,
    string Tool,
    string Notice,
    RulesetPart? Old,
    ImmutableArray<InputPart> OldInputs,
    RulesetPart? New,
    ImmutableArray<InputPart> NewInputs,
    ImmutableArray<CautionChangePart> Cautions,
    ImmutableArray<ChangePart> Changes,
    ImmutableArray<RenamedTierPart> RenamedTiers,
    ImmutableArray<string> GoneTargets,
    ImmutableArray<string> NewTargets,
    ImmutableArray<ComparedTargetPart> Targets);
