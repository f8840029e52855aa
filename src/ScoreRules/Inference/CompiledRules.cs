using NRules;

namespace ScoreRules.Inference;

/// <summary>The rules of a house made ready to run, as often as wanted and over any facts.</summary>
public sealed class CompiledRules
{
    internal CompiledRules(ISessionFactory factory, ConditionKeys keys)
    {
        Factory = factory;
        Keys = keys;
    }

    /// <summary>One rule of the engine for each statement.</summary>
    internal ISessionFactory Factory { get; }

    /// <summary>What the conditions ask for.</summary>
    internal ConditionKeys Keys { get; }
}
