using System.Globalization;

namespace ScoreRules.Publishing;

/// <summary>
/// Counted things: "1 movement", "12 movements". The plural is given, not guessed: the rules by which a library guesses
/// plurals took longer to load than a whole ranking takes.
/// </summary>
public static class CountText
{
    /// <summary>A number and what it counts, in the plural made with -s.</summary>
    public static string Of(int count, string one) => Of(count, one, one + "s");

    /// <summary>A number and what it counts.</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">The singular.</param>
    /// <param name="many">The plural.</param>
    public static string Of(int count, string one, string many) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count is 1 or -1 ? one : many)}");
}
