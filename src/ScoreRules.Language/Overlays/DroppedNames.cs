using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Names that were dropped or changed, so that a message about what still uses them can say so.</summary>
internal sealed class DroppedNames
{
    private readonly Dictionary<(string Kind, string Key), DroppedName> names = [];

    /// <summary>Notes a name.</summary>
    /// <param name="kind">Kind of the thing, such as "criterion", "tiers" or "rule".</param>
    /// <param name="name">Its name.</param>
    /// <param name="dropped">Who took it away.</param>
    public void Add(string kind, string name, DroppedName dropped) => names[(kind, NameText.Key(name))] = dropped;

    /// <summary>Who took a name away; null when nobody did.</summary>
    public DroppedName? Find(string kind, string name) => names.GetValueOrDefault((kind, NameText.Key(name)));
}
