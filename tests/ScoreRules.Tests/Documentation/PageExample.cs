using System.Text;
using ScoreRules.Houses;
using ScoreRules.Tests.Support;

namespace ScoreRules.Tests.Documentation;

/// <summary>
/// An example of a page as a house. The words behind its fence say how: <c>rules</c> and <c>csv</c> stand in the small
/// house of <c>prelude.rules</c>, <c>rules alone</c> stands alone; three more fences make files that a page cannot hold. A second
/// example <c>rules base</c> is the house it builds on; <c>rules base twice</c> says that two folders hold such a house.
/// </summary>
internal sealed class PageExample(MarkdownBlock block, MarkdownBlock? below = null)
{
    private const int TooLarge = 17 << 20;
    private const int VeryMany = 5000;
    private static readonly string Prelude = Repository.Read("tests", "ScoreRules.Tests", "Documentation", "prelude.rules");

    public string[] Codes() => [.. Judge.Run(Sources()).Findings.Select(finding => finding.Code).Distinct(StringComparer.Ordinal)];

    public string[] Errors() => [.. Judge.Run(Sources()).Findings.Where(finding => finding.Severity == Language.Diagnostics.Severity.Error).Select(Language.Diagnostics.DiagnosticText.Full)];

    private HouseSources Sources() => block.Info switch
    {
        "rules" => InPrelude("house.rules", block.Text),
        "csv" => InPrelude("movements.csv", block.Text),
        "rules alone" => new HouseSources([File("house.rules", block.Text)], []),
        "rules repeated" => InPrelude("house.rules", Repeated()),
        "rules saved as Latin-1" => OnDisk(Encoding.Latin1.GetBytes(block.Text)),
        "rules repeated above 16 MB" => OnDisk(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(block.Text, TooLarge / block.Text.Length)))),
        _ => throw new InvalidOperationException($"no example is fenced as \"{block.Info}\""),
    };

    private string Repeated()
    {
        var name = block.Text[..block.Text.IndexOf(", ...", StringComparison.Ordinal)].Split("leave out ")[1];
        return block.Text.Replace("...", string.Join(", ", Enumerable.Repeat(name, VeryMany)), StringComparison.Ordinal);
    }

    private HouseSources InPrelude(string path, string text)
    {
        var houses = below is null ? [] : Enumerable.Repeat(Language.Binding.HouseName.Read(below.Text)!.Name, below.Info == "rules base twice" ? 2 : 1);
        HouseFile[] floor = below is { Info: "rules base" } ? [File("base/house.rules", below.Text) with { Layer = 1 }] : [];
        return new HouseSources([.. floor, File(path, text) with { Layer = floor.Length + 1 }, File("shared/prelude.rules", Prelude)], []) { Nearby = [.. houses] };
    }

    private static HouseFile File(string path, string text) => new(path, text, "", path.EndsWith(".csv", StringComparison.Ordinal));

    // What happens to the bytes of a file is seen only in a real file.
    private static HouseSources OnDisk(byte[] bytes)
    {
        var folder = Directory.CreateTempSubdirectory("scorerules-page-");
        try
        {
            System.IO.File.WriteAllBytes(Path.Combine(folder.FullName, "house.rules"), bytes);
            return HouseFolder.Read(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
