using System.Diagnostics.CodeAnalysis;

namespace ScoreRules.Statistics;

/// <summary>
/// Numbers from which a statistic cannot be made: a variance below zero, a single arm, a network in parts, orders that go round in a
/// circle. The message says which number and why, in plain words, and stands alone. Everything in <c>ScoreRules.Statistics</c> refuses
/// bad input in this one way; a figure that does not exist for good input (a correlation with a constant) is a null instead.
/// </summary>
[SuppressMessage("Roslynator", "RCS1194", Justification = "The message says in words what is wrong; the name of a parameter would only be added to its end.")]
public sealed class StatisticsInputException : ArgumentException
{
    /// <summary>Makes one without a message.</summary>
    public StatisticsInputException()
    {
    }

    /// <summary>Makes one with its message.</summary>
    public StatisticsInputException(string message)
        : base(message)
    {
    }

    /// <summary>Makes one with its message and what caused it.</summary>
    public StatisticsInputException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
