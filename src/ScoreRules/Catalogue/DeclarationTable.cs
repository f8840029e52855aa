using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>Declared movements by name order; a movement's position here is its index in the catalogue.</summary>
internal sealed class DeclarationTable
{
    private readonly Dictionary<string, int> byKey = new(StringComparer.Ordinal);

    /// <summary>Sorts the declarations and learns their names; of several with one name the first by place stays.</summary>
    public DeclarationTable(ImmutableArray<MovementDeclaration> declarations)
    {
        Sorted =
        [
            .. declarations
                .OrderBy(declaration => declaration.Info.Location, Comparer<SourceLocation>.Create(SourceLocation.Compare))
                .DistinctBy(declaration => NameText.Key(declaration.Name), StringComparer.Ordinal)
                .OrderBy(declaration => NameText.Key(declaration.Name), StringComparer.Ordinal),
        ];
        for (var i = 0; i < Sorted.Length; i++)
        {
            byKey.Add(NameText.Key(Sorted[i].Name), i);
        }

        for (var i = 0; i < Sorted.Length; i++)
        {
            foreach (var synonym in Sorted[i].Synonyms)
            {
                byKey.TryAdd(NameText.Key(synonym), i);
            }
        }
    }

    /// <summary>The declarations, ordinal by the key of their names.</summary>
    public ImmutableArray<MovementDeclaration> Sorted { get; }

    /// <summary>Position of the movement with a name or synonym, or -1.</summary>
    public int IndexOf(string name) => byKey.GetValueOrDefault(NameText.Key(name), -1);
}
