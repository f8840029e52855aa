using ScoreRules.Language.Syntax;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>
/// Texts that could not be read and may declare a name. Nothing is said about an unknown name that stands in one of them:
/// the text has been reported, and the name may be declared by it.
/// </summary>
internal sealed class Doubts
{
    private readonly List<HashSet<string>> texts = [];
    private readonly HashSet<string> reported = new(StringComparer.Ordinal);
    private readonly HashSet<string> nameless = new(StringComparer.Ordinal);

    /// <summary>Names that a house took away from those below it.</summary>
    public Overlays.DroppedNames Dropped { get; init; } = new();

    /// <summary>Whether the first line of a statement could not be read, so that any statement may be meant.</summary>
    public bool HasLostHead { get; private set; }

    /// <summary>Adds a text.</summary>
    /// <param name="kind">Head of the statement it stands in.</param>
    /// <param name="text">The text; empty when the statement lacks its name, so that any name of its kind may be meant.</param>
    public void Add(string kind, string text)
    {
        HasLostHead |= kind.Length == 0;
        if (text.Length == 0)
        {
            nameless.Add(kind);
        }
        else
        {
            texts.Add(Words(text));
        }
    }

    /// <summary>Whether a name of a kind may be declared by such a text.</summary>
    public bool MayDeclare(string kind, string name)
    {
        var words = Words(name);
        return nameless.Contains(kind) || texts.Exists(text => text.IsSupersetOf(words));
    }

    /// <summary>Whether a name that is declared nowhere is met for the first time, as whatever kind of thing: one slip, one message.</summary>
    public bool IsNew(string name) => reported.Add(NameText.Key(name));

    // Parts of a name that holds a comma may be used one by one, so commas and quotes are blanks here.
    // Letters are taken for what they look like: that they are others has been reported.
    // Nor does the order of words count: two of them may have been changed over.
    private static HashSet<string> Words(string text) => new(NameText.Key(SignNames.Meant(text)).Split([' ', ',', '"'], StringSplitOptions.RemoveEmptyEntries), StringComparer.Ordinal);
}
