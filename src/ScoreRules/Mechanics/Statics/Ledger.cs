using ScoreRules.Mechanics.Statics.Checks;

namespace ScoreRules.Mechanics.Statics;

/// <summary>Notes down what is used, assumed, missing and objected to while a mechanism is prepared.</summary>
internal sealed class Ledger
{
    private readonly List<InputUse> inputs = [];
    private readonly List<MissingInput> missing = [];
    private readonly List<string> assumptions = [];
    private readonly List<MechanicsFinding> findings = [];

    public bool IsStopped => missing.Exists(input => input.StopsTheCurve) || findings.Exists(finding => finding.Severity == FindingSeverity.Refused);

    /// <summary>A stated value, or the usual one with a note of what stating it would give.</summary>
    public double Take(string name, string unit, double? stated, double usual, string gain)
    {
        inputs.Add(new InputUse(name, stated ?? usual, unit, stated is null ? InputOrigin.Assumed : InputOrigin.Stated));
        if (stated is null)
        {
            missing.Add(new MissingInput(name, gain, StopsTheCurve: false));
        }

        return stated ?? usual;
    }

    public void Use(string name, string unit, double value, InputOrigin origin) => inputs.Add(new InputUse(name, value, unit, origin));

    public void Lack(string name, string gain) => missing.Add(new MissingInput(name, gain, StopsTheCurve: true));

    public void Assume(params ReadOnlySpan<string> sentences) => assumptions.AddRange(sentences);

    public void Object(IEnumerable<MechanicsFinding> objections) => findings.AddRange(objections);

    public MomentProfile Close(Mechanism mechanism, Curves.MomentCurve? curve) =>
        new(mechanism, curve, [.. inputs], [.. missing], [.. assumptions], [.. findings]);
}
