using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Houses;

/// <summary>
/// Finds and reads the files of a house: all <c>*.rules</c> and <c>*.csv</c> of its folder and those of the shared folder,
/// which is a sibling named <c>shared</c> or the nearest <c>rulesets/shared</c> above.
/// </summary>
public static class HouseFolder
{
    /// <summary>Reads a house.</summary>
    /// <param name="typed">What the user typed: a folder, or a file that stands for its folder.</param>
    /// <exception cref="HouseException">There is no such folder, or nothing in it.</exception>
    public static HouseSources Read(string typed)
    {
        var folder = FolderOf(typed);
        var own = HousePaths.FilesIn(folder);
        if (own.Count == 0)
        {
            throw new HouseException($"\"{typed}\" holds no rule text: no file in it ends in .rules or .csv. A house is a folder of such files, for example rulesets/longreach.");
        }

        var findings = new DiagnosticBag();
        var reader = new HouseFileReader(findings);
        ReportFolders(folder, findings);
        var chain = new HouseChain(reader).Of(folder, own);
        return new HouseSources([.. SharedFiles(folder, reader).Concat(chain.Files).OrderBy(file => file.Path, StringComparer.Ordinal)], findings.ToSorted()) { Nearby = chain.Nearby };
    }

    /// <summary>A house of one text that is not a file, with the shared folder of the current folder.</summary>
    public static HouseSources WithShared(HouseFile text)
    {
        var findings = new DiagnosticBag();
        var reader = new HouseFileReader(findings);
        return WithBase(text, reader, findings);
    }

    /// <summary>The shared files that a house in this folder would see; the folder need not exist yet.</summary>
    public static HouseSources ReadShared(string folder)
    {
        var findings = new DiagnosticBag();
        var reader = new HouseFileReader(findings);
        return new HouseSources([.. SharedFiles(folder, reader)], findings.ToSorted());
    }

    /// <summary>Whether a folder holds rule text.</summary>
    public static bool IsHouse(string folder) => Directory.Exists(folder) && HousePaths.FilesIn(folder).Count > 0;

    /// <summary>Whether two typed names mean the same house, however they are written.</summary>
    /// <exception cref="HouseException">There is no such folder or file.</exception>
    public static bool AreOne(string typed, string other) =>
        string.Equals(Path.TrimEndingDirectorySeparator(Path.GetFullPath(FolderOf(typed))), Path.TrimEndingDirectorySeparator(Path.GetFullPath(FolderOf(other))), StringComparison.Ordinal);

    /// <summary>The files that a typed name means, without the shared ones: all of a folder, or one file alone.</summary>
    /// <exception cref="HouseException">There is no such folder or file.</exception>
    public static IReadOnlyList<string> OwnFiles(string typed) => File.Exists(typed) ? [typed.Replace('\\', '/')] : HousePaths.FilesIn(FolderOf(typed));

    private static HouseSources WithBase(HouseFile text, HouseFileReader reader, DiagnosticBag findings)
    {
        var chain = new HouseChain(reader).Of(".", text);
        return new HouseSources([.. SharedFiles(".", reader), .. chain.Files], findings.ToSorted()) { Nearby = chain.Nearby };
    }

    private static IEnumerable<HouseFile> SharedFiles(string folder, HouseFileReader reader) =>
        HousePaths.SharedOf(folder) is { } shared ? HousePaths.FilesIn(shared).Select(reader.Read).OfType<HouseFile>() : [];

    private static string FolderOf(string typed)
    {
        if (Directory.Exists(typed))
        {
            return typed;
        }

        if (File.Exists(typed))
        {
            var parent = Path.GetDirectoryName(typed);
            return string.IsNullOrEmpty(parent) ? "." : parent;
        }

        throw new HouseException($"There is no folder or file \"{typed}\". Name a house: a folder of .rules files, for example rulesets/longreach.{Nearby(typed)}");
    }

    private static string Nearby(string typed)
    {
        var parent = Path.GetDirectoryName(typed) is { Length: > 0 } above ? above : ".";
        if (!Directory.Exists(parent))
        {
            return "";
        }

        var names = Directory.EnumerateDirectories(parent).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal);
        var near = NameSuggester.Nearest(Path.GetFileName(typed), names);
        return near.IsEmpty ? "" : $" Did you mean \"{near[0]}\"?";
    }

    private static void ReportFolders(string folder, DiagnosticBag findings)
    {
        foreach (var path in Directory.EnumerateDirectories(folder).Where(HousePaths.IsRuleText).Order(StringComparer.Ordinal))
        {
            HouseFileReader.Report(findings, HousePaths.Join(folder, Path.GetFileName(path)), "is a folder, and a file of rule text was expected", "give the folder a name that does not end in .rules or .csv");
        }
    }
}
