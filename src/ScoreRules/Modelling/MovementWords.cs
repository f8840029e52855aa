using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Statics.Strains;

namespace ScoreRules.Modelling;

/// <summary>What a movement says in the words of the vocabulary that mechanics needs. Empty or null where it does not say or the house has no such attribute.</summary>
internal sealed class MovementWords(BoundRuleset ruleset, Movement movement)
{
    public string Pattern => Word("movement pattern");

    public string Resistance => Word("resistance type");

    public string LineOfPull => Word("line of pull");

    public string KineticChain => Word("kinetic chain");

    public string LoadPoint => Word("load point");

    public string BodyPosition => Word("body position");

    public string Handle => Word("handle");

    /// <summary>Whether both sides share one load.</summary>
    public bool IsBilateral => Word("laterality") == "bilateral";

    /// <summary>Whether both sides do the same at the same time.</summary>
    public bool WorksBothSides => Word("laterality") is "bilateral" or "independent";

    /// <summary>The parts of the body that rest on something.</summary>
    public ImmutableArray<string> Supports => Find("support") is { IsWord: true } support ? [.. Value(support).Codes.Select(code => support.Values[code])] : [];

    /// <summary>How the body is held; null where the movement does not say.</summary>
    public BodySupport? BodySupport =>
        Find("support") is { IsWord: true } support && Value(support) is { IsKnown: true } held && Word("laterality") is { Length: > 0 } laterality
            ? Mechanics.Statics.Strains.BodySupport.Of([.. held.Codes.Select(code => support.Values[code])], laterality)
            : null;

    /// <summary>Slope of a rail or sled from the floor, degrees.</summary>
    public double? TrackSlope => Number("track slope");

    /// <summary>Part of the body's mass that is moved, 0 to 1.</summary>
    public double? BodyShare => Number("body mass share") / 100;

    /// <summary>Whether a part of the body rests on something.</summary>
    public bool IsSupportedAt(string part) => Find("support") is { IsWord: true } support && support.CodeOf(part) is >= 0 and var code && Value(support).Codes.Contains(code);

    private string Word(string name) =>
        Find(name) is { Kind: AttributeKind.OneOf } attribute && Value(attribute) is { IsKnown: true, Codes: [var code, ..] } ? attribute.Values[code] : "";

    private double? Number(string name) => Find(name) is { Kind: AttributeKind.Measure } attribute && Value(attribute) is { IsKnown: true } value ? value.Number : null;

    private AttributeDefinition? Find(string name) => ruleset.Attributes.FirstOrDefault(attribute => attribute.Name == name);

    private FactValue Value(AttributeDefinition attribute) => movement.Facts[attribute.Index].Value;
}
