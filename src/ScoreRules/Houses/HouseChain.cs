using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Houses;

/// <summary>
/// Follows "builds on" from a house to the one beside it that bears the name, and on to what that one builds on. A house that
/// is not found, or is met again, ends the chain: what is wrong with it is said when the texts are read.
/// </summary>
/// <param name="reader">Reads the files.</param>
internal sealed class HouseChain(HouseFileReader reader)
{
    /// <summary>The files of a house and of all below it.</summary>
    /// <param name="folder">The house's folder.</param>
    /// <param name="paths">Its files.</param>
    public (IEnumerable<HouseFile> Files, ImmutableArray<string> Nearby) Of(string folder, IEnumerable<string> paths) => From(folder, Read(paths));

    /// <summary>A house of one text that is not a file, and all below it.</summary>
    public (IEnumerable<HouseFile> Files, ImmutableArray<string> Nearby) Of(string folder, HouseFile text) => From(folder, [text]);

    private (IEnumerable<HouseFile> Files, ImmutableArray<string> Nearby) From(string folder, List<HouseFile> own)
    {
        if (NameOf(own.OrderBy(file => file.Path, StringComparer.Ordinal)) is not { BuildsOn: not null } name)
        {
            return (own.Select(file => file with { Layer = 1 }), []);
        }

        var beside = HousePaths.Siblings(folder).Select(Open).Where(house => house.Name is not null).ToList();
        var floors = new List<List<HouseFile>> { own };
        var seen = new HashSet<string>(StringComparer.Ordinal) { NameText.Key(name.Name) };
        for (var at = name; at?.BuildsOn is { } below && seen.Add(NameText.Key(below));)
        {
            var found = beside.FindAll(house => NameText.Same(house.Name!.Name, below));
            at = found.Count == 1 ? found[0].Name : null;
            if (found.Count == 1)
            {
                floors.Add(Read(found[0].Paths));
            }
        }

        return (floors.SelectMany((files, i) => files.Select(file => file with { Layer = floors.Count - i })), [.. beside.Select(house => house.Name!.Name)]);
    }

    private List<HouseFile> Read(IEnumerable<string> paths) => [.. paths.Select(reader.Read).OfType<HouseFile>()];

    private static (List<string> Paths, HouseName? Name) Open(string folder)
    {
        var paths = Readable(folder);
        var quiet = new HouseFileReader(new Language.Diagnostics.DiagnosticBag());
        return (paths, NameOf(paths.Order(StringComparer.Ordinal).Where(path => path.EndsWith(".rules", StringComparison.OrdinalIgnoreCase)).Select(quiet.Read).OfType<HouseFile>()));
    }

    // A folder beside that nobody may look into is no house for us.
    private static List<string> Readable(string folder)
    {
        try
        {
            return HousePaths.FilesIn(folder);
        }
        catch (HouseException)
        {
            return [];
        }
    }

    // Reads no further than the first file that says its name.
    private static HouseName? NameOf(IEnumerable<HouseFile> inOrder) => inOrder.Where(file => !file.IsSpreadsheet).Select(file => HouseName.Read(file.Text)).FirstOrDefault(name => name is not null);
}
