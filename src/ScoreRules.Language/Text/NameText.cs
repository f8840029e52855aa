using System.Text;

namespace ScoreRules.Language.Text;

/// <summary>How names are compared: accents joined to their letters, without regard to case, inner white space as one blank.</summary>
public static class NameText
{
    /// <summary>The form under which a name is looked up.</summary>
    /// <param name="name">A name as written.</param>
    public static string Key(string name)
    {
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

    private static bool Ascii(string text) => System.Text.Ascii.IsValid(text);
}
