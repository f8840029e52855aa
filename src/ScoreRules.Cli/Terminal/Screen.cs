using System.Text;

namespace ScoreRules.Cli.Terminal;

/// <summary>Where results and messages go: results to one stream, messages to another, emphasis only on a terminal.</summary>
internal sealed class Screen(TextWriter results, TextWriter messages, TextReader input, bool resultsAreTerminal, bool messagesAreTerminal)
{
    private const string Bold = "\u001b[1m";
    private const string Plain = "\u001b[0m";
    private bool? forced;

    /// <summary>The process's own streams, always UTF-8 with plain line ends.</summary>
    public static Screen Real()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var results = new StreamWriter(Console.OpenStandardOutput(), utf8, 1 << 16) { AutoFlush = false, NewLine = "\n" };
        var messages = new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true, NewLine = "\n" };
        return new Screen(results, messages, Console.In, !Console.IsOutputRedirected, !Console.IsErrorRedirected);
    }

    /// <summary>Whether an exception only means that the reader of our output has gone.</summary>
    public static bool IsClosedPipe(IOException exception) =>
        exception.Message.Contains("Broken pipe", StringComparison.OrdinalIgnoreCase) || exception.HResult is 32 or unchecked((int)0x8007006D);

    /// <summary>Turns emphasis on or off; null decides by terminal and NO_COLOR.</summary>
    public void Emphasise(bool? always) => forced = always;

    /// <summary>A result.</summary>
    public void Result(string text)
    {
        results.Write(Marked(text, resultsAreTerminal));
        results.Flush();
    }

    /// <summary>A message on a line of its own.</summary>
    public void Error(string line) => messages.WriteLine(line);

    /// <summary>A message of several lines whose first line is emphasised.</summary>
    public void Message(string text) => messages.WriteLine(Marked(text, messagesAreTerminal));

    /// <summary>A line that says how far long work is: on a terminal only, never into a file or a pipe.</summary>
    public ProgressLine Progress(string what) => new(messagesAreTerminal ? messages.Write : null, what);

    /// <summary>All that is written to standard input.</summary>
    public string ReadInput() => input.ReadToEnd();

    // Emphasis carries no meaning: it only makes the first line of a block easier to find.
    private string Marked(string text, bool terminal)
    {
        var wanted = forced ?? (terminal && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")));
        var end = text.IndexOf('\n', StringComparison.Ordinal);
        return wanted && end > 0 ? Bold + text[..end] + Plain + text[end..] : text;
    }
}
