using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>The names that a table gives to movements.</summary>
internal sealed class NameRegister(DiagnosticBag findings)
{
    private readonly Dictionary<string, (CsvCell Place, string Owner)> names = new(StringComparer.Ordinal);
    private readonly List<(CsvCell Place, string Owner)> synonyms = [];

    /// <summary>Gives a movement its name; reports a name that an earlier row has given.</summary>
    public bool Declare(CsvCell name)
    {
        var key = NameText.Key(name.Text);
        if (names.TryAdd(key, (name, key)))
        {
            return true;
        }

        findings.Add(CsvFindings.NameTwice(name.Location, names[key].Place.Location));
        return false;
    }

    /// <summary>Notes another name of a movement, to be checked when all names are known.</summary>
    public void Note(CsvCell synonym, CsvCell name) => synonyms.Add((synonym, NameText.Key(name.Text)));

    /// <summary>Reports other names that two movements share.</summary>
    public void CheckSynonyms()
    {
        foreach (var (place, owner) in synonyms)
        {
            var key = NameText.Key(place.Text);
            if (!names.TryAdd(key, (place, owner)) && names[key].Owner != owner)
            {
                findings.Add(CsvFindings.SynonymTwice(place.Location, names[key].Place.Location));
            }
        }
    }
}
