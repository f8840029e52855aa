using System.Globalization;
using ScoreRules.Cli.Terminal;

namespace ScoreRules.Cli;

/// <summary>The <c>scorerules</c> command.</summary>
public static class Program
{
    /// <summary>Runs one command and gives its exit code.</summary>
    public static int Main(string[] args)
    {
        // Whatever a library words or sorts is the same for everybody.
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
        using var interrupt = new InterruptHandler();
        var screen = Screen.Real();
        try
        {
            return CommandLine.Run(args, screen);
        }
        catch (IOException exception) when (Screen.IsClosedPipe(exception))
        {
            // Whoever read our output has seen enough.
            return ExitCode.Fine;
        }
        catch (IOException exception)
        {
            screen.Error($"The output cannot be written: {exception.Message}");
            return ExitCode.Misuse;
        }
#pragma warning disable CA1031 // the last line of defence: nobody is ever shown a stack trace
        catch (Exception exception)
        {
            screen.Error($"Something went wrong inside scorerules, and it is not your fault ({exception.GetType().Name}: {exception.Message}). Please report it together with the files and the command.");
            return ExitCode.Fault;
        }
#pragma warning restore CA1031
    }
}
