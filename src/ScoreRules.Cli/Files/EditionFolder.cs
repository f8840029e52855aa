using System.Text;
using ScoreRules.Houses;
using ScoreRules.Publishing.Editions;
using ScoreRules.Report;

namespace ScoreRules.Cli.Files;

/// <summary>A folder of editions: reads them, and keeps the pages that list them.</summary>
internal static class EditionFolder
{
    /// <summary>The editions in it.</summary>
    /// <exception cref="HouseException">One cannot be read.</exception>
    public static IEnumerable<PublishedEdition> Read(string folder) =>
        FolderFiles.FoldersWith(folder, EditionFile.Contents).Select(name => PublishedEdition.Read(name, FolderFiles.Read(Path.Combine(folder, name))));

    /// <summary>The pages that list editions: name and text.</summary>
    public static IEnumerable<(string Name, string Text)> List(IEnumerable<PublishedEdition> editions)
    {
        var list = EditionList.Of(editions, new PlacementDifference());
        return [(EditionListFiles.Page, EditionListReport.Render(list)), (EditionListFiles.Markdown, EditionListMarkdown.Print(list))];
    }

    /// <summary>Writes those pages, where they are not right already.</summary>
    /// <exception cref="HouseException">One cannot be written.</exception>
    public static void WriteList(string folder, IEnumerable<PublishedEdition> editions)
    {
        foreach (var (name, text) in List(editions))
        {
            var path = Path.Combine(folder, name);
            if (!File.Exists(path) || !File.ReadAllBytes(path).AsSpan().SequenceEqual(Encoding.UTF8.GetBytes(text)))
            {
                WholeFile.Write(path, text);
            }
        }
    }
}
