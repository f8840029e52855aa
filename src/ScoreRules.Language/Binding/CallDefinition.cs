namespace ScoreRules.Language.Binding;

/// <summary>One way in to a called fact; several statements with one name are alternatives.</summary>
/// <param name="Info">What the statement says about itself; its name is the fact's.</param>
/// <param name="Condition">When it holds.</param>
/// <param name="Stratum">0 when it rests on given facts alone, else one more than what it rests on.</param>
public sealed record CallDefinition(StatementInfo Info, Condition Condition, int Stratum) : BoundStatement(Info)
{
    /// <summary>Name of the fact it makes.</summary>
    public string Fact => Info.Name!;
}
