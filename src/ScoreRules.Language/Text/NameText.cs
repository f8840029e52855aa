using System.Text;

namespace ScoreRules.Language.Text;

/// <summary>How names are compared: accents joined to their letters, without regard to case, inner white space as one blank.</summary>
public static class NameText
{
    /// <summary>The form under which a name is looked up.</summary>
    /// <param name="name">A name as written.</param>
    public static string Key(string name)
    {
        if (IsKey(name))
        {
            return name;
        }

        var composed = Ascii(name) ? name : Composition.Compose(name);
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
                key.Append(c switch { '’' => '\'', '‐' or '‑' => '-', _ => char.ToLowerInvariant(c) });
            }
        }

        return key.ToString().TrimEnd(' ');
    }

    /// <summary>Whether two names mean the same thing.</summary>
    public static bool Same(string left, string right) => string.Equals(Key(left), Key(right), StringComparison.Ordinal);

    // Most names are written as they are looked up: plain small letters with single blanks.
    private static bool IsKey(string name)
    {
        var blank = true;
        foreach (var c in name)
        {
            if (c is ' ' && blank || !(c is ' ' or (> ' ' and < '\x7F' and not (>= 'A' and <= 'Z'))))
            {
                return false;
            }

            blank = c is ' ';
        }

        return !blank;
    }

    private static bool Ascii(string text) => System.Text.Ascii.IsValid(text);
}
