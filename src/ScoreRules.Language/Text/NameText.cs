using System.Text;

namespace ScoreRules.Language.Text;

/// <summary>How names are compared: composed (NFC), without regard to case, inner white space as one blank.</summary>
public static class NameText
{
    /// <summary>The form under which a name is looked up.</summary>
    /// <param name="name">A name as written; lone surrogates are kept as they are.</param>
    public static string Key(string name)
    {
        var composed = Ascii(name) || HasLoneSurrogate(name) ? name : name.Normalize(NormalizationForm.FormC);
        var key = new StringBuilder(composed.Length);
        foreach (var c in composed)
        {
            if (char.IsWhiteSpace(c))
            {
                if (key.Length > 0 && key[^1] != ' ')
                {
                    key.Append(' ');
                }
            }
            else
            {
                key.Append(c == '’' ? '\'' : char.ToLowerInvariant(c));
            }
        }

        return key.ToString().TrimEnd(' ');
    }

    /// <summary>Whether two names mean the same thing.</summary>
    public static bool Same(string left, string right) => string.Equals(Key(left), Key(right), StringComparison.Ordinal);

    private static bool Ascii(string text) => System.Text.Ascii.IsValid(text);

    private static bool HasLoneSurrogate(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]))
            {
                return true;
            }
        }

        return false;
    }
}
