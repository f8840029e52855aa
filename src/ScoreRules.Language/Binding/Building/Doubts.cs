using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>
/// Texts that could not be read and may declare a name. Nothing is said about an unknown name that stands in one of them:
/// the text has been reported, and the name may be declared by it.
/// </summary>
internal sealed class Doubts
{
    private readonly List<string> texts = [];

    /// <summary>Adds a text.</summary>
    public void Add(string text) => texts.Add($" {NameText.Key(text).Replace('"', ' ').Replace(',', ' ')} ");

    /// <summary>Whether a name may be declared by such a text.</summary>
    public bool MayDeclare(string name)
    {
        var words = $" {NameText.Key(name).Replace(',', ' ')} ";
        return texts.Exists(text => text.Contains(words, StringComparison.Ordinal));
    }
}
