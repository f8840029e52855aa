using System.Collections.Frozen;
using System.Text;

namespace ScoreRules.Language.Text;

/// <summary>
/// Joins a Latin letter and the accent that follows it to one character, as Unicode's form NFC does. Written by hand for
/// the accents of the languages written in Latin letters, because the program runs without culture data, and then the
/// platform's own normalisation leaves the text as it is.
/// </summary>
internal static class Composition
{
    private static readonly (char Mark, string Bases, string Composed)[] Accents =
    [
        ('\u0300', "AEIOUaeiouNn", "ÀÈÌÒÙàèìòùǸǹ"),
        ('\u0301', "AEIOUYaeiouyCcLlNnRrSsZz", "ÁÉÍÓÚÝáéíóúýĆćĹĺŃńŔŕŚśŹź"),
        ('\u0302', "AEIOUaeiouCcGgHhJjSsWwYy", "ÂÊÎÔÛâêîôûĈĉĜĝĤĥĴĵŜŝŴŵŶŷ"),
        ('\u0303', "AINOUainou", "ÃĨÑÕŨãĩñõũ"),
        ('\u0304', "AEIOUaeiou", "ĀĒĪŌŪāēīōū"),
        ('\u0306', "AEGIOUaegiou", "ĂĔĞĬŎŬăĕğĭŏŭ"),
        ('\u0307', "CEGIZcegz", "ĊĖĠİŻċėġż"),
        ('\u0308', "AEIOUYaeiouy", "ÄËÏÖÜŸäëïöüÿ"),
        ('\u030A', "AUau", "ÅŮåů"),
        ('\u030B', "OUou", "ŐŰőű"),
        ('\u030C', "CDENRSTZcdenrstz", "ČĎĚŇŘŠŤŽčďěňřšťž"),
        ('\u0327', "CGKLNRSTcgklnrst", "ÇĢĶĻŅŖŞŢçģķļņŗşţ"),
        ('\u0328', "AEIUaeiu", "ĄĘĮŲąęįų"),
    ];

    private static readonly FrozenDictionary<(char Base, char Mark), char> Pairs = Accents
        .SelectMany(accent => accent.Bases.Zip(accent.Composed, (letter, composed) => KeyValuePair.Create((letter, accent.Mark), composed)))
        .ToFrozenDictionary();

    /// <summary>The text with such pairs joined; what has no joined form stays as it is.</summary>
    public static string Compose(string text)
    {
        var composed = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (composed.Length > 0 && Pairs.TryGetValue((composed[^1], c), out var joined))
            {
                composed[^1] = joined;
            }
            else
            {
                composed.Append(c);
            }
        }

        return composed.ToString();
    }
}
