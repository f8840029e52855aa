namespace ScoreRules.Cli.Terminal;

/// <summary>Ends the program at once, with its own exit code, when Ctrl-C is pressed. Nothing half-written is left: only whole texts are printed.</summary>
internal sealed class InterruptHandler : IDisposable
{
    /// <summary>Starts listening.</summary>
    public InterruptHandler() => Console.CancelKeyPress += Stop;

    /// <summary>Stops listening.</summary>
    public void Dispose() => Console.CancelKeyPress -= Stop;

    private static void Stop(object? sender, ConsoleCancelEventArgs press) => Environment.Exit(ExitCode.Interrupted);
}
