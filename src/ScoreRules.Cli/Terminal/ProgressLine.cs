using System.Globalization;

namespace ScoreRules.Cli.Terminal;

/// <summary>One line that says how far long work is; on a terminal only, and gone when the work is done.</summary>
/// <param name="write">Writes to the terminal; null where there is none, then nothing is shown.</param>
/// <param name="what">What is done, such as "breaking rules".</param>
internal sealed class ProgressLine(Action<string>? write, string what) : IDisposable
{
    private const int Width = 24;
    private const string Clear = "\r\u001b[K";
    private int shown = -1;

    /// <summary>Shows how many of all are done.</summary>
    public void Report(int done, int all)
    {
        var percent = all == 0 ? 100 : done * 100 / all;
        if (write is not null && percent != shown)
        {
            shown = percent;
            var filled = percent * Width / 100;
            write(string.Create(CultureInfo.InvariantCulture, $"{Clear}{what} [{new string('#', filled)}{new string('.', Width - filled)}] {done} of {all}"));
        }
    }

    /// <summary>Takes the line away.</summary>
    public void Dispose()
    {
        if (shown >= 0)
        {
            write?.Invoke(Clear);
        }
    }
}
