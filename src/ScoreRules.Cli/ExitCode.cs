namespace ScoreRules.Cli;

/// <summary>What the command's exit code means.</summary>
internal static class ExitCode
{
    /// <summary>All is well.</summary>
    public const int Fine = 0;

    /// <summary>There are errors in the rules, or expectations that fail where that counts.</summary>
    public const int Findings = 1;

    /// <summary>The command was used wrongly, or a file cannot be read.</summary>
    public const int Misuse = 2;

    /// <summary>A fault of the program.</summary>
    public const int Fault = 3;

    /// <summary>Interrupted from the keyboard.</summary>
    public const int Interrupted = 130;
}
