namespace ScoreRules.Houses;

/// <summary>A house that cannot be opened at all: a sentence that says why and what to do.</summary>
public sealed class HouseException : Exception
{
    /// <summary>Says why.</summary>
    public HouseException(string message)
        : base(message)
    {
    }

    /// <summary>Says why, with the cause.</summary>
    public HouseException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Without a sentence; only for frameworks that demand it.</summary>
    public HouseException()
        : base("The house cannot be opened.")
    {
    }
}
